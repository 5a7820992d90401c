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
    across_->setSizes({390, 890});
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
    table_->resizeColumnsToContents();
    // Rows are painted with more room at their edges than the view reckons with.
    const int edges = fontMetrics().averageCharWidth() + 1;
    for (int column = 0; column < BenchModel::columnCount_; ++column)
        table_->setColumnWidth(column, table_->columnWidth(column) + edges);
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
