#include "sheets/sheets_page.h"

#include <QDataStream>
#include <QDateTime>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QIODevice>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "derive/paper.h"
#include "desk/when_seen.h"
#include "paper_view.h"
#include "save_all.h"
#include "sheets_model.h"
#include "theme/card.h"
#include "theme/row_delegate.h"
#include "theme/segments.h"
#include "theme/status.h"
#include "words/values.h"

namespace fayline {
namespace {

constexpr double zoomStep = 1.25;

/// Paper that is out of date stands out, by words and weight as well as by ink.
class SheetDelegate : public RowDelegate {
  public:
    using RowDelegate::RowDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        QStyleOptionViewItem marked = option;
        if (index.column() == SheetsModel::paper && index.data(SheetsModel::oldRole).toBool()) {
            marked.font.setBold(true);
            marked.palette.setColor(QPalette::Text, statusInk(Status::near, option.palette).ink);
        }
        RowDelegate::paint(painter, marked, index);
    }
};

QLabel* wrapped() {
    auto* label = new QLabel;
    label->setWordWrap(true);
    return label;
}

}  // namespace

SheetsPage::SheetsPage(Desk& desk, QString program, QWidget* parent)
    : Page(parent),
      desk_(desk),
      program_(std::move(program)),
      model_(new SheetsModel(this)),
      list_(new QTableView),
      preview_(new PaperView),
      papers_(new Segments({tr("A4"), tr("Letter")})),
      old_(wrapped()),
      page_(new QLabel),
      before_(new QPushButton(tr("‹ Pre&vious page"))),
      after_(new QPushButton(tr("Ne&xt page ›"))),
      print_(new QPushButton(tr("&Print…"))),
      save_(new QPushButton(tr("&Save as PDF…"))),
      saveAll_(new QPushButton(tr("Save &all as PDF…"))),
      stop_(new QPushButton(tr("S&top"))),
      progress_(new QProgressBar),
      sheetsOrWords_(new QStackedWidget),
      across_(new QSplitter(Qt::Horizontal)),
      idle_(new QTimer(this)) {
    across_->addWidget(makeList());
    across_->addWidget(makePreview());
    across_->setStretchFactor(0, 0);
    across_->setStretchFactor(1, 1);
    across_->setSizes({470, 770});
    across_->setHandleWidth(12);
    across_->setChildrenCollapsible(false);
    auto* nothing = wrapped();
    nothing->setAlignment(Qt::AlignCenter);
    nothing->setText(tr(
        "No sheets yet: nothing is to be drilled. Decide the <a href=\"frames.count\">frames</a> "
        "and what <a href=\"heel.kind\">holds them</a>, and a sheet is made for each."));
    connect(nothing, &QLabel::linkActivated, this, &SheetsPage::hullWanted);
    sheetsOrWords_->addWidget(across_);
    sheetsOrWords_->addWidget(nothing);
    auto* caution = wrapped();
    caution->setText(tr("%1 <a href=\"more\">All cautions</a>")
                         .arg(asText(standingCautions().front()).toHtmlEscaped()));
    caution->setForegroundRole(QPalette::PlaceholderText);
    connect(caution, &QLabel::linkActivated, this, &SheetsPage::cautionsWanted);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 12, 12, 8);
    layout->setSpacing(8);
    layout->addWidget(sheetsOrWords_, 1);
    layout->addWidget(caution);
    setFirst(list_);
    connect(&desk_, &Desk::recordsChanged, this, [this] {
        model_->setRecorded(desk_.journal().recorded());
        sayOld();
    });
    idle_->setInterval(0);
    connect(idle_, &QTimer::timeout, this, &SheetsPage::learnNext);
    connect(&desk_, &Desk::projectChanged, this, [this] {
        if (saving_ != nullptr) stopSaving();
    });
    // What the maker looks at is another from here on.
    connect(&desk_, &Desk::resultsChanged, this, [this] {
        maker_.reset();
        idle_->stop();
    });
    follow_ = new WhenSeen(desk_, this, [this] { refresh(); });
}

SheetsPage::~SheetsPage() = default;

/// A project that is open for reading only keeps no record, and needs none: it stays as it is.
void SheetsPage::keepRecord(const Typed& records, const QString& title) {
    if (records.empty() || desk_.isReadOnly()) return;
    if (const auto kept = desk_.record(records, title); !kept)
        emit stopped(asText(kept.error().line()), {});
}

QWidget* SheetsPage::makeList() {
    auto* card = new Card(tr("Sheets"));
    list_->setModel(model_);
    makeReadingTable(*list_);
    list_->setItemDelegate(new SheetDelegate(list_));
    list_->setSelectionMode(QAbstractItemView::SingleSelection);
    list_->setAccessibleName(tr("Sheets"));
    connect(list_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &SheetsPage::showChosen);
    auto* deeds = new QHBoxLayout;
    deeds->addWidget(saveAll_);
    deeds->addWidget(progress_, 1);
    deeds->addWidget(stop_);
    deeds->addStretch();
    progress_->hide();
    progress_->setAccessibleName(tr("Sheets written"));
    stop_->hide();
    connect(saveAll_, &QPushButton::clicked, this, &SheetsPage::askAndSaveAll);
    connect(stop_, &QPushButton::clicked, this, &SheetsPage::stopSaving);
    old_->hide();
    auto* revisions = wrapped();
    revisions->setText(tr(
        "A revision code changes whenever anything on its sheet changes, and comes back when the "
        "change is undone. Paper with another code is out of date."));
    revisions->setForegroundRole(QPalette::PlaceholderText);
    card->contents()->addWidget(list_, 1);
    card->contents()->addWidget(old_);
    card->contents()->addWidget(revisions);
    card->contents()->addLayout(deeds);
    fitColumns();
    return card;
}

QWidget* SheetsPage::makePreview() {
    auto* card = new Card;
    auto* head = new QHBoxLayout;
    auto* words = new QLabel(tr("Paper:"));
    words->setForegroundRole(QPalette::PlaceholderText);
    papers_->setAccessibleName(tr("Paper"));
    head->addWidget(words);
    head->addWidget(papers_);
    head->addStretch(1);
    head->addWidget(before_);
    head->addWidget(page_);
    head->addWidget(after_);
    head->addStretch(1);
    head->addWidget(print_);
    head->addWidget(save_);
    card->contents()->addLayout(head);
    card->contents()->addWidget(preview_, 1);
    connect(papers_, &Segments::chosen, this, [this](int paper) {
        paperChosen_ = true;
        setPaper(static_cast<PaperSize>(paper));
    });
    connect(before_, &QPushButton::clicked, this,
            [this] { preview_->setPage(preview_->page() - 1); });
    connect(after_, &QPushButton::clicked, this,
            [this] { preview_->setPage(preview_->page() + 1); });
    connect(preview_, &PaperView::pageChanged, this, &SheetsPage::sayPage);
    connect(print_, &QPushButton::clicked, this, &SheetsPage::askAndPrint);
    connect(save_, &QPushButton::clicked, this, &SheetsPage::askAndSave);
    return card;
}

PaperOptions SheetsPage::options() const {
    PaperOptions options;
    options.paper = paper_;
    options.printed =
        QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")).toStdString();
    options.program = program_.toStdString();
    options.steps = &desk_.journal().steps();
    return options;
}

/// Sheets of what is on the desk now.
const SheetMaker& SheetsPage::maker() {
    if (!maker_) {
        maker_ = std::make_unique<const SheetMaker>(desk_.project(), *desk_.results(),
                                                    desk_.catalogue(), options());
    }
    return *maker_;
}

void SheetsPage::showEvent(QShowEvent* event) {
    if (model_->firstUnknown() >= 0) idle_->start();  // goes on where it was left
    Page::showEvent(event);
}

void SheetsPage::changeEvent(QEvent* event) {
    Page::changeEvent(event);
    if (event->type() == QEvent::FontChange) fitColumns();
}

void SheetsPage::fitColumns() {
    const int letter = fontMetrics().averageCharWidth();
    list_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 10);
    list_->horizontalHeader()->setSectionResizeMode(SheetsModel::title, QHeaderView::Stretch);
    list_->setColumnWidth(SheetsModel::revision, letter * 15);
    list_->setColumnWidth(SheetsModel::pages, letter * 7);
    list_->setColumnWidth(SheetsModel::paper, letter * 14);
}

void SheetsPage::refresh() {
    if (!paperChosen_) {
        const PaperSize paper = speechOf(desk_.project()).units == UnitSystem::inches
                                    ? PaperSize::letter
                                    : PaperSize::a4;
        if (paper != paper_) maker_.reset();
        paper_ = paper;
        papers_->setChoice(static_cast<int>(paper_));
    }
    const QModelIndex at = list_->currentIndex();
    const std::string chosen = at.isValid() ? model_->name(at.row()).id : std::string();
    std::vector<SheetName> names = maker().names();
    // Sheets from which nothing is drilled are listed among others, but not alone.
    if (std::all_of(names.begin(), names.end(), [](const SheetName& n) { return n.empty; }))
        names.clear();
    model_->setRecorded(desk_.journal().recorded());
    model_->show(std::move(names));
    const bool empty = model_->rowCount() == 0;
    sheetsOrWords_->setCurrentIndex(empty ? 1 : 0);
    if (!empty) {
        int row = std::max(0, model_->rowOf(chosen));
        for (int i = 0; chosen.empty() && i < model_->rowCount(); ++i) {
            if (model_->name(i).empty) continue;
            row = i;  // the first with something to drill
            break;
        }
        list_->setCurrentIndex(model_->index(row, 0));
    }
    showChosen();
    if (!empty) idle_->start();
}

void SheetsPage::showChosen() {
    const QModelIndex at = list_->currentIndex();
    if (!at.isValid() || model_->rowCount() == 0) {
        preview_->setSheet(std::nullopt);
    } else {
        auto sheet = maker().sheet(model_->name(at.row()).id);
        if (sheet) model_->tell(at.row(), *sheet);
        preview_->setSheet(std::move(sheet));
    }
    for (QPushButton* button : {print_, save_}) button->setEnabled(preview_->pageCount() > 0);
    saveAll_->setEnabled(model_->rowCount() > 0 && saving_ == nullptr);
    sayPage();
}

/// Which paper is not to be drilled from any more.
void SheetsPage::sayOld() {
    QStringList titles;
    for (const OldPaper& old : model_->old()) {
        const int row = model_->rowOf(old.sheet);
        titles.append(row < 0 ? tr("%1 (no such sheet now)").arg(asText(old.sheet))
                              : asText(model_->name(row).title));
    }
    constexpr qsizetype most = 6;
    const qsizetype more = titles.size() - most;
    old_->setVisible(!titles.isEmpty());
    if (titles.isEmpty()) return;
    QString words = titles.mid(0, most).join(QStringLiteral(", "));
    if (more > 0) words += QStringLiteral(", ") + tr("and %1 more").arg(more);
    old_->setText(
        titles.size() == 1
            ? tr("1 sheet on paper is out of date: %1.").arg(words)
            : tr("%1 sheets on paper are out of date: %2.").arg(titles.size()).arg(words));
    QPalette inked = palette();
    inked.setColor(QPalette::WindowText, statusInk(Status::near, palette()).ink);
    old_->setPalette(inked);
}

/// Makes one more sheet for its revision code, when there is nothing else to do.
void SheetsPage::learnNext() {
    const int row = model_->firstUnknown();
    if (row < 0 || !isVisible() || follow_->isStale()) {
        idle_->stop();
        sayOld();
        return;
    }
    const auto sheet = maker().sheet(model_->name(row).id);
    if (!sheet) {
        idle_->stop();
        return;
    }
    model_->tell(row, *sheet);
}

void SheetsPage::sayPage() {
    const int pages = preview_->pageCount();
    page_->setText(pages == 0 ? QString()
                              : tr("page %1 of %2").arg(preview_->page() + 1).arg(pages));
    before_->setEnabled(preview_->page() > 0);
    after_->setEnabled(preview_->page() + 1 < pages);
    if (preview_->sheet())
        preview_->setAccessibleDescription(tr("%1, %2, revision %3")
                                               .arg(asText(preview_->sheet()->title), page_->text(),
                                                    asText(preview_->sheet()->revision)));
}

bool SheetsPage::choose(const std::string& id) {
    follow_->catchUp();
    const int row = model_->rowOf(id);
    if (row < 0) return false;
    list_->setCurrentIndex(model_->index(row, 0));
    return true;
}

void SheetsPage::setPaper(PaperSize paper) {
    if (paper != paper_) maker_.reset();
    paper_ = paper;
    papers_->setChoice(static_cast<int>(paper));
    showChosen();
}

void SheetsPage::saveAll(const QString& folder) {
    if (saving_ != nullptr) return;
    saving_ = new SaveAll(desk_, options(), folder, this);
    progress_->setRange(0, std::max(1, saving_->count()));
    progress_->setValue(0);
    progress_->show();
    stop_->show();
    stop_->setFocus(Qt::OtherFocusReason);
    saveAll_->setEnabled(false);
    connect(saving_, &SaveAll::progressed, progress_,
            [this](int written, int) { progress_->setValue(written); });
    connect(saving_, &SaveAll::finished, this, [this, folder](bool all) {
        const QString sheets = counted(saving_->written(), tr("1 sheet"), tr("%1 sheets"));
        const int of = saving_->count();
        keepRecord(saving_->records(), tr("%1 put on paper").arg(sheets));
        endSaving();
        emit done(all ? tr("%1 stand in %2.").arg(sheets, folder)
                      : tr("Stopped: %1 of %2 stand in %3.").arg(sheets).arg(of).arg(folder));
    });
    connect(saving_, &SaveAll::failed, this, [this](const QString& says) {
        endSaving();
        emit stopped(says, {});
    });
}

void SheetsPage::stopSaving() {
    if (saving_ != nullptr) saving_->stop();
}

void SheetsPage::endSaving() {
    saving_->deleteLater();
    saving_ = nullptr;
    progress_->hide();
    stop_->hide();
    saveAll_->setEnabled(model_->rowCount() > 0);
    if (isVisible()) list_->setFocus(Qt::OtherFocusReason);
}

bool SheetsPage::does(PageCommand command) const {
    return (command == PageCommand::zoomIn || command == PageCommand::zoomOut ||
            command == PageCommand::zoomToFit) &&
           preview_->pageCount() > 0;
}

void SheetsPage::run(PageCommand command) {
    if (command == PageCommand::zoomIn) preview_->setZoom(preview_->zoom() * zoomStep);
    if (command == PageCommand::zoomOut) preview_->setZoom(preview_->zoom() / zoomStep);
    if (command == PageCommand::zoomToFit) preview_->setZoom(PaperView::leastZoom);
}

QByteArray SheetsPage::arrangement() const {
    QByteArray state;
    QDataStream stream(&state, QIODevice::WriteOnly);
    stream << across_->saveState() << paperChosen_ << static_cast<int>(paper_);
    return state;
}

void SheetsPage::arrange(const QByteArray& state) {
    QByteArray across;
    bool chosen = false;
    int paper = 0;
    QDataStream stream(state);
    stream >> across >> chosen >> paper;
    if (stream.status() != QDataStream::Ok || paper < 0 || paper > 1) return;
    across_->restoreState(across);
    paperChosen_ = chosen;
    if (chosen) {
        paper_ = static_cast<PaperSize>(paper);
        papers_->setChoice(paper);
    }
}

}  // namespace fayline
