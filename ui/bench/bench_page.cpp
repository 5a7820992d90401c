#include "bench/bench_page.h"

#include <QApplication>
#include <QClipboard>
#include <QDataStream>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QIODevice>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTableView>
#include <QTextBrowser>
#include <QVBoxLayout>
#include <algorithm>

#include "bench_html.h"
#include "bench_row.h"
#include "joint/screw.h"
#include "sheet/joint_picture.h"
#include "sketch/sketch_view.h"
#include "theme/card.h"
#include "theme/row_delegate.h"
#include "theme/segments.h"
#include "theme/status.h"
#include "words/checks.h"
#include "words/trace_values.h"

namespace fayline {
namespace {

enum Part { working, order, moisture, sizes };

QLabel* wrapped() {
    auto* label = new QLabel;
    label->setWordWrap(true);
    return label;
}

}  // namespace

BenchPage::BenchPage(Desk& desk, BenchSetup setup, QWidget* parent)
    : Page(parent),
      desk_(desk),
      setup_(std::move(setup)),
      work_(new BenchWork(setup_.reader, this)),
      model_(new BenchModel(this)),
      picture_(new SketchView),
      verdict_(wrapped()),
      pending_(wrapped()),
      table_(new QTableView),
      parts_(new Segments(
          {tr("Working"), tr("What lets go first"), tr("Moisture"), tr("Sizes and cautions")})),
      text_(new QTextBrowser),
      across_(new QSplitter(Qt::Horizontal)),
      upright_(new QSplitter(Qt::Vertical)) {
    across_->addWidget(makeFields());
    across_->addWidget(makeResults());
    across_->setStretchFactor(0, 0);
    across_->setStretchFactor(1, 1);
    across_->setSizes({430, 850});
    across_->setHandleWidth(12);
    across_->setChildrenCollapsible(false);
    auto* caution = wrapped();
    caution->setText(tr("%1 <a href=\"more\">All cautions</a>")
                         .arg(asText(standingCautions().front()).toHtmlEscaped()));
    caution->setForegroundRole(QPalette::PlaceholderText);
    connect(caution, &QLabel::linkActivated, this, &BenchPage::cautionsWanted);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 12, 12, 8);
    layout->setSpacing(8);
    layout->addWidget(makeDeeds());
    layout->addWidget(across_, 1);
    layout->addWidget(caution);
    connect(work_, &BenchWork::changed, this, &BenchPage::refresh);
    connect(&work_->history(), &QUndoStack::indexChanged, this, &BenchPage::historyChanged);
    connect(&desk_, &Desk::resultsChanged, this, &BenchPage::speak);
    speak();
    refresh();
    if (!rows_.empty()) setFirst(rows_.front()->entry());
}

BenchPage::~BenchPage() {
    // Fields in focus end their typing while they go; nobody is to be told then.
    for (const auto* rows : {&rows_, &memberRows_}) {
        for (BenchRow* row : *rows) row->disconnect(this);
    }
}

QWidget* BenchPage::makeDeeds() {
    auto* deeds = new QWidget;
    auto* across = new QHBoxLayout(deeds);
    across->setContentsMargins(0, 0, 0, 0);
    auto* words = new QLabel(tr("One joint by itself. Nothing here touches the hull."));
    words->setForegroundRole(QPalette::PlaceholderText);
    words->setWordWrap(true);
    const auto button = [&](const QString& text, const QString& tip, auto deed) {
        auto* made = new QPushButton(text);
        made->setToolTip(tip);
        connect(made, &QPushButton::clicked, this, deed);
        across->addWidget(made);
    };
    across->addWidget(words, 1);
    button(tr("Ne&w"), tr("Begin again with the first example"), &BenchPage::startAfresh);
    button(tr("&Load…"), tr("A joint file, as fayline joint reads it"), &BenchPage::askAndLoad);
    button(tr("&Save…"), tr("As a joint file"), &BenchPage::askAndSave);
    button(tr("From the &hull…"), tr("Take the joint of one fastening of the hull"),
           &BenchPage::askAndTake);
    button(tr("&Copy result"), tr("As text, with all workings"),
           [this] { QApplication::clipboard()->setText(plainResult()); });
    button(tr("Calculation &record…"), tr("Everything needed to check it by hand, as PDF or text"),
           &BenchPage::askAndSaveRecord);
    button(tr("&Print…"), tr("Print the calculation record"), &BenchPage::askAndPrint);
    return deeds;
}

BenchRow* BenchPage::addRow(const BenchField& field, const std::string& path, QVBoxLayout* to) {
    auto* row = new BenchRow(field, path, *setup_.catalogue);
    to->addWidget(row);
    connect(row, &BenchRow::typed, this,
            [this, row](const std::string& text) { takeTyped(row, text, false); });
    connect(row, &BenchRow::finished, this,
            [this, row](const std::string& text) { takeTyped(row, text, true); });
    connect(row, &BenchRow::abandoned, this, [this, row] {
        work_->takeBack(row->path());
        work_->pause();
        row->revert();
    });
    return row;
}

QWidget* BenchPage::makeFields() {
    auto* inner = new QWidget;
    auto* all = new QVBoxLayout(inner);
    all->setContentsMargins(0, 0, 6, 0);
    all->setSpacing(12);
    auto* fastener = new Card(tr("Fastening"));
    for (const BenchField& field : fastenerFields())
        rows_.push_back(addRow(field, field.key, fastener->contents()));
    all->addWidget(fastener);
    membersCard_ = new Card(tr("Members, head side first"));
    members_ = new QWidget;
    membersAt_ = new QVBoxLayout(members_);
    membersAt_->setContentsMargins(0, 0, 0, 0);
    membersCard_->contents()->addWidget(members_);
    auto* add = new QPushButton(tr("Add a &member"));
    connect(add, &QPushButton::clicked, this, &BenchPage::addMember);
    auto* addAt = new QHBoxLayout;
    addAt->addWidget(add);
    addAt->addStretch(1);
    membersCard_->contents()->addLayout(addAt);
    all->addWidget(membersCard_);
    auto* load = new Card(tr("Load and service"));
    for (const BenchField& field : loadFields())
        rows_.push_back(addRow(field, field.key, load->contents()));
    all->addWidget(load);
    auto* more = new QPushButton(tr("Show measured, declared and rare figures"));
    more->setCheckable(true);
    connect(more, &QPushButton::toggled, this, [this](bool on) {
        moreShown_ = on;
        followRows();
    });
    all->addWidget(more);
    all->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setWidget(inner);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setMinimumWidth(fontMetrics().averageCharWidth() * 46);
    fields_ = scroll;
    return scroll;
}

/// One block of fields for each member; made anew when their number changes.
void BenchPage::makeMemberCards() {
    const std::size_t count = work_->draft().members.size();
    if (count == memberCount_) return;
    memberCount_ = count;
    for (BenchRow* row : memberRows_) row->disconnect(this);
    memberRows_.clear();
    while (QLayoutItem* item = membersAt_->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
    for (std::size_t i = 0; i < count; ++i) {
        const int number = static_cast<int>(i);
        auto* block = new QWidget;
        auto* upright = new QVBoxLayout(block);
        upright->setContentsMargins(0, 0, 0, 6);
        auto* head = new QHBoxLayout;
        auto* title = new QLabel(tr("<b>%1</b>").arg(tr("Member %1").arg(number + 1)));
        head->addWidget(title, 1);
        const auto button = [&](const QString& words, const QString& name, bool possible,
                                auto deed) {
            auto* made = new QPushButton(words);
            made->setAccessibleName(name);
            made->setToolTip(name);
            made->setEnabled(possible);
            if (words.size() == 1) made->setFixedWidth(fontMetrics().averageCharWidth() * 6);
            connect(made, &QPushButton::clicked, this, deed);
            head->addWidget(made);
        };
        button(tr("↑"), tr("Member %1 nearer to the head").arg(number + 1), i > 0,
               [this, number] { moveMember(number, -1); });
        button(tr("↓"), tr("Member %1 farther from the head").arg(number + 1), i + 1 < count,
               [this, number] { moveMember(number, 1); });
        button(tr("Remove"), tr("Remove member %1").arg(number + 1), count > 2,
               [this, number] { removeMember(number); });
        upright->addLayout(head);
        for (const BenchField& field : memberFields()) {
            BenchField own = field;
            own.label = field.label;
            memberRows_.push_back(
                addRow(own, "members[" + std::to_string(i) + "]." + field.key, upright));
            memberRows_.back()->entry()->setAccessibleName(
                tr("%1 of member %2").arg(field.label).arg(number + 1));
        }
        membersAt_->addWidget(block);
    }
}

QWidget* BenchPage::makeResults() {
    auto* top = new Card;
    picture_->setAccessibleName(tr("The joint cut open, head on the left"));
    picture_->setFrameShape(QFrame::NoFrame);
    picture_->setMinimumHeight(130);
    picture_->setMaker([this](const SketchRoom& room) {
        return work_->last() ? jointDrawing(work_->last()->named.joint,
                                            {room.size, room.letterMm, work_->units()})
                             : Drawing{room.size, {}, {}, {}, false};
    });
    verdict_->setTextFormat(Qt::RichText);
    verdict_->setAccessibleName(tr("What governs"));
    pending_->setForegroundRole(QPalette::Text);
    pending_->setAccessibleName(tr("What is still needed"));
    top->contents()->addWidget(picture_, 1);
    top->contents()->addWidget(verdict_);
    top->contents()->addWidget(pending_);
    auto* middle = new Card;
    table_->setModel(model_);
    makeReadingTable(*table_);
    table_->setItemDelegate(new RowDelegate(table_));
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setAccessibleName(tr("Limit states, both bases"));
    table_->setMinimumHeight(120);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &BenchPage::showText);
    middle->contents()->addWidget(table_);
    auto* below = new Card;
    parts_->setAccessibleName(tr("What is shown below the table"));
    text_->setOpenLinks(false);
    text_->setFrameShape(QFrame::NoFrame);
    text_->setAccessibleName(tr("Working"));
    text_->viewport()->setAutoFillBackground(false);
    below->contents()->addWidget(parts_);
    below->contents()->addWidget(text_, 1);
    connect(parts_, &Segments::chosen, this, &BenchPage::showText);
    for (Card* card : {top, middle, below}) upright_->addWidget(card);
    upright_->setSizes({250, 240, 280});
    upright_->setHandleWidth(12);
    upright_->setChildrenCollapsible(false);
    return upright_;
}

void BenchPage::speak() {
    const Speech speech = speechOf(desk_.project());
    work_->speak(speech.units, speech.basis);
}

void BenchPage::refresh() {
    makeMemberCards();
    followRows();
    picture_->refresh();
    showVerdict();
    const QModelIndex at = table_->currentIndex();
    constexpr int none = -1;
    const int kind =
        at.isValid() ? static_cast<int>(model_->lines()[static_cast<std::size_t>(at.row())].kind)
                     : none;
    const auto lines = work_->last() ? linesOf(*work_->last()) : std::vector<BenchLine>{};
    const int least = governing(lines, work_->basis());
    int row = std::max(0, least);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (kind == static_cast<int>(lines[i].kind)) row = static_cast<int>(i);
    }
    const bool any = !lines.empty();
    model_->show(lines, work_->units(), work_->basis());
    if (any) table_->setCurrentIndex(model_->index(row, 0));
    table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 10);
    showText();
}

void BenchPage::followRows() {
    const BenchDraft& draft = work_->draft();
    const auto kind = fastenerKindNamed(draft.at("fastener.kind"));
    for (const auto* rows : {&rows_, &memberRows_}) {
        for (BenchRow* row : *rows) {
            const std::string standing = draft.at(row->path());
            row->follow(standing, work_->units(), rule(row->path()));
            const BenchField& field = row->field();
            const bool fits =
                field.only.empty() || !kind ||
                std::find(field.only.begin(), field.only.end(), *kind) != field.only.end();
            const auto about =
                std::find_if(work_->problems().begin(), work_->problems().end(),
                             [&](const Problem& problem) { return problem.where == row->path(); });
            if (about != work_->problems().end() && !row->isTouched())
                row->object(sentence(*about));
            else if (about == work_->problems().end() && !row->isTouched())
                row->object({});
            row->setVisible((fits && (!field.more || moreShown_)) || !standing.empty() ||
                            !row->objection().isEmpty());
        }
    }
}

/// What is used where a field is left empty, where that is worth knowing.
QString BenchPage::rule(const std::string& path) const {
    if (!work_->last() || !work_->problems().empty()) return {};
    const JointFastener& f = work_->last()->named.joint.fastener;
    if (f.kind == FastenerKind::woodScrew) {
        const ScrewShape shape = screwShape(f);
        const auto said = [&](const auto& figure) {
            return showTraceValue(figure.value, work_->units());
        };
        if (path == "fastener.root") return said(shape.root);
        if (path == "fastener.thread_length") return said(shape.thread);
        if (path == "fastener.tip") return said(shape.tip);
        if (path == "fastener.head_diameter") return said(shape.head);
        if (path == "fastener.diameter") return said(shape.body);
    }
    if (path == "fastener.ends.head") return asText(std::string(nameOf(f.head)));
    if (path == "fastener.ends.point") return asText(std::string(nameOf(f.point)));
    if (path == "fastener.metal_factor") return QString::number(f.metal.factor);
    if (path == "load.lateral" || path == "load.axial") return tr("none given");
    return {};
}

void BenchPage::takeTyped(BenchRow* row, const std::string& text, bool ended) {
    const auto refused = work_->set(
        row->path(), text,
        row->path().rfind("members[", 0) == 0
            ? tr("%1 of %2")
                  .arg(row->field().label,
                       row->entry()->accessibleName().section(QStringLiteral(" of "), -1))
            : row->field().label);
    if (!ended) return;
    // What read on the way to an entry that does not is not meant either.
    if (refused) work_->takeBack(row->path());
    work_->pause();
    if (!refused) {
        row->revert();
        followRows();
        return;
    }
    const QString now = shownText(row->field(), work_->draft().at(row->path()), *setup_.catalogue);
    row->object(
        sentence(*refused) + QLatin1Char(' ') +
        (now.isEmpty() ? tr("Nothing stands there yet.") : tr("Still in force: %1.").arg(now)));
}

void BenchPage::showVerdict() {
    QStringList says;
    for (const Problem& problem : work_->problems()) says.append(asText(problem.line()));
    pending_->setVisible(!says.isEmpty());
    pending_->setText(says.isEmpty()
                          ? QString()
                          : tr("Not worked out as it stands: %1. The figures are those of the last "
                               "joint that could be.")
                                .arg(says.mid(0, 2).join(QStringLiteral("; "))));
    if (!work_->last()) {
        verdict_->setText({});
        return;
    }
    const auto lines = linesOf(*work_->last());
    const UnitSystem units = work_->units();
    QString rich;
    const Basis leading = work_->basis();
    for (const Basis basis : {leading, leading == Basis::us ? Basis::ec5 : Basis::us}) {
        const int at = governing(lines, basis);
        if (at < 0) continue;
        const BenchLine& line = lines[static_cast<std::size_t>(at)];
        const Check& check = basis == Basis::ec5 ? *line.ec5 : *line.us;
        const QString carries = asText(displayForce(*check.working, units));
        QString words =
            check.margin
                ? tr("%1 %2, governed by %3: must carry %4, can carry %5.")
                      .arg(asText(marginText(*check.margin)), statusWord(check.status),
                           stateWords(check), asText(displayForce(*check.demand, units)), carries)
                : tr("carries least by %1: %2.").arg(stateWords(check), carries);
        if (basis == leading) {
            words += QLatin1Char(' ') + tr("Starts to give: %1. Comes apart: %2, %3.")
                                            .arg(bandWords(check.gives, units),
                                                 bandWords(check.apart, units),
                                                 check.soft ? tr("slowly") : tr("suddenly"));
        }
        rich +=
            QStringLiteral("<p style=\"margin:0 0 2px 0;color:%1;\"><b>%2:</b> %3</p>")
                .arg(
                    statusInk(check.margin ? check.status : Status::unloaded, palette()).ink.name(),
                    basisWords(basis).toHtmlEscaped(), words.toHtmlEscaped());
    }
    const bool loaded = work_->last()->named.joint.load.has_value();
    if (!loaded)
        rich += QStringLiteral("<p style=\"margin:0;\">%1</p>")
                    .arg(tr("Give a load to see margins.").toHtmlEscaped());
    verdict_->setText(rich);
}

void BenchPage::showPart(int part) {
    parts_->setChoice(part);
    showText();
}

void BenchPage::showText() {
    if (!work_->last()) {
        text_->clear();
        return;
    }
    const BenchResult& worked = *work_->last();
    const UnitSystem units = work_->units();
    const QModelIndex at = table_->currentIndex();
    switch (parts_->choice()) {
        case order:
            text_->setHtml(orderHtml(worked, units, palette()));
            return;
        case moisture:
            text_->setHtml(moistureHtml(worked, units, palette()));
            return;
        case sizes:
            text_->setHtml(sizesHtml(worked, units, palette()));
            return;
        default:
            break;
    }
    if (!at.isValid() || at.row() >= model_->rowCount()) {
        text_->clear();
        return;
    }
    text_->setHtml(workingHtml(worked, model_->lines()[static_cast<std::size_t>(at.row())].kind,
                               units, palette()));
}

void BenchPage::settle() {
    for (const auto* rows : {&rows_, &memberRows_}) {
        // Taking one may make the rows anew.
        for (BenchRow* row : std::vector<BenchRow*>(*rows)) row->settle();
    }
}

bool BenchPage::does(PageCommand command) const {
    return (command == PageCommand::copy || command == PageCommand::copyWithHeadings ||
            command == PageCommand::zoomIn || command == PageCommand::zoomOut ||
            command == PageCommand::zoomToFit) &&
           work_->last().has_value();
}

void BenchPage::run(PageCommand command) {
    if (command == PageCommand::zoomIn) picture_->zoomIn();
    if (command == PageCommand::zoomOut) picture_->zoomOut();
    if (command == PageCommand::zoomToFit) picture_->zoomToFit();
    if (command != PageCommand::copy && command != PageCommand::copyWithHeadings) return;
    QString chosen = text_->textCursor().selectedText();
    chosen.replace(QChar(0x2029), QLatin1Char('\n'));
    QApplication::clipboard()->setText(chosen.isEmpty() ? plainResult() : chosen);
}

QByteArray BenchPage::arrangement() const {
    QByteArray state;
    QDataStream stream(&state, QIODevice::WriteOnly);
    stream << across_->saveState() << upright_->saveState();
    return state;
}

void BenchPage::arrange(const QByteArray& state) {
    QByteArray across, upright;
    QDataStream stream(state);
    stream >> across >> upright;
    if (stream.status() != QDataStream::Ok) return;
    across_->restoreState(across);
    upright_->restoreState(upright);
}

QUndoStack& BenchPage::history() {
    return work_->history();
}

BenchRow* BenchPage::row(const std::string& path) const {
    for (const auto* rows : {&rows_, &memberRows_}) {
        for (BenchRow* row : *rows) {
            if (row->path() == path) return row;
        }
    }
    return nullptr;
}

void BenchPage::addMember() {
    settle();
    BenchDraft draft = work_->draft();
    constexpr std::size_t most = 20;
    if (draft.members.size() >= most) {
        emit stopped(tr("A joint has at most 20 members."), {});
        return;
    }
    BenchDraft::Texts member = draft.members.empty() ? BenchDraft::Texts{} : draft.members.back();
    member["name"] = "member " + std::to_string(draft.members.size() + 1);
    member.erase("counterbore");
    member.erase("gap");
    draft.members.push_back(std::move(member));
    work_->replace(draft, tr("a member more"));
}

void BenchPage::removeMember(int member) {
    settle();
    BenchDraft draft = work_->draft();
    if (member < 0 || member >= static_cast<int>(draft.members.size()) || draft.members.size() < 3)
        return;
    draft.members.erase(draft.members.begin() + member);
    work_->replace(draft, tr("a member less"));
}

void BenchPage::moveMember(int member, int by) {
    settle();
    BenchDraft draft = work_->draft();
    const int count = static_cast<int>(draft.members.size());
    if (member < 0 || member >= count || member + by < 0 || member + by >= count) return;
    std::swap(draft.members[static_cast<std::size_t>(member)],
              draft.members[static_cast<std::size_t>(member + by)]);
    work_->replace(draft, tr("members in another order"));
}

void BenchPage::showEvent(QShowEvent* event) {
    speak();
    Page::showEvent(event);
}

void BenchPage::changeEvent(QEvent* event) {
    Page::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        showVerdict();
        showText();
    }
}

}  // namespace fayline
