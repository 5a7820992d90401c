#include "margins/margins_page.h"

#include <QDataStream>
#include <QHBoxLayout>
#include <QIODevice>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "chart/chart.h"
#include "chart_data.h"
#include "desk/when_seen.h"
#include "filter_bar.h"
#include "margins_view.h"
#include "sketch/sketch_view.h"
#include "stations/pictures.h"
#include "theme/card.h"
#include "theme/segments.h"
#include "words/checks.h"
#include "words/things.h"
#include "working/working_panel.h"

namespace fayline {
namespace {

constexpr int rest_ms = 60;

enum ChartChoice { worst, moment, share };

QLabel* wrapped() {
    auto* label = new QLabel;
    label->setWordWrap(true);
    return label;
}

}  // namespace

MarginsPage::MarginsPage(Desk& desk, QWidget* parent)
    : Page(parent),
      desk_(desk),
      model_(new MarginsModel(this)),
      table_(new MarginsView(*model_)),
      filter_(new FilterBar),
      profile_(new SketchView),
      chart_(new Chart),
      charts_(new Segments({tr("Worst margin"), tr("Keel moment"), tr("Load shares")})),
      working_(new WorkingPanel),
      workingCard_(new Card(tr("Working"))),
      nothing_(wrapped()),
      missing_(wrapped()),
      tableOrWords_(new QStackedWidget),
      across_(new QSplitter(Qt::Horizontal)),
      upright_(new QSplitter(Qt::Vertical)),
      left_(new QSplitter(Qt::Vertical)),
      soon_(new QTimer(this)) {
    soon_->setSingleShot(true);
    soon_->setInterval(rest_ms);
    layOut();
    connectParts();
    setFirst(table_);
}

void MarginsPage::layOut() {
    auto* profileCard = new Card(tr("Side profile"));
    profile_->setAccessibleName(tr("Side profile"));
    profile_->setFrameShape(QFrame::NoFrame);
    profile_->setMinimumHeight(110);
    profile_->setMaker([this](const SketchRoom& room) {
        return profileDrawing(profileOf(desk_), {room.size, room.letterMm,
                                                 speechOf(desk_.project()).units, std::nullopt});
    });
    profileCard->contents()->addWidget(profile_);

    auto* tableCard = new Card;
    nothing_->setAlignment(Qt::AlignCenter);
    nothing_->setTextFormat(Qt::RichText);
    tableOrWords_->addWidget(table_);
    tableOrWords_->addWidget(nothing_);
    tableCard->contents()->addWidget(filter_);
    tableCard->contents()->addWidget(missing_);
    tableCard->contents()->addWidget(tableOrWords_, 1);
    auto* chartCard = new Card;
    charts_->setAccessibleName(tr("What the chart shows"));
    chartCard->contents()->addWidget(charts_);
    chartCard->contents()->addWidget(chart_, 1);
    left_->addWidget(tableCard);
    left_->addWidget(chartCard);
    left_->setSizes({350, 250});
    workingCard_->contents()->addWidget(working_);
    working_->setBackVisible(false);
    workingCard_->setMinimumWidth(fontMetrics().averageCharWidth() * 43);
    across_->addWidget(left_);
    across_->addWidget(workingCard_);
    across_->setStretchFactor(0, 1);
    across_->setStretchFactor(1, 0);
    across_->setSizes({840, 400});
    upright_->addWidget(profileCard);
    upright_->addWidget(across_);
    upright_->setStretchFactor(0, 0);
    upright_->setStretchFactor(1, 1);
    upright_->setSizes({170, 610});
    for (QSplitter* splitter : {across_, upright_, left_}) {
        splitter->setHandleWidth(12);
        splitter->setChildrenCollapsible(false);
    }
    auto* caution = wrapped();
    caution->setText(tr("%1 <a href=\"more\">All cautions</a>")
                         .arg(asText(standingCautions().front()).toHtmlEscaped()));
    caution->setForegroundRole(QPalette::PlaceholderText);
    connect(caution, &QLabel::linkActivated, this, &MarginsPage::cautionsWanted);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 12, 12, 8);
    layout->setSpacing(8);
    auto* record = new QPushButton(tr("Calculation &record"));
    record->setToolTip(tr("Everything needed to check the margins by hand"));
    auto* records = new QMenu(record);
    records->addAction(tr("Of the &whole hull…"), this, [this] { emit recordWanted({}); });
    QAction* here = records->addAction(tr("Of this &station…"), this,
                                       [this] { emit recordWanted(chosenFrame()); });
    connect(records, &QMenu::aboutToShow, this, [this, here] {
        here->setEnabled(!chosenFrame().isEmpty());
        here->setText(chosenFrame().isEmpty() ? tr("Of this &station…")
                                              : tr("Of &station %1…").arg(chosenFrame()));
    });
    record->setMenu(records);
    auto* foot = new QHBoxLayout;
    foot->addWidget(caution, 1);
    foot->addWidget(record);
    layout->addWidget(upright_, 1);
    layout->addLayout(foot);
}

/// The frame of the chosen line; empty where it has none.
QString MarginsPage::chosenFrame() const {
    const QModelIndex at = table_->currentIndex();
    return at.isValid() ? asText(model_->check(at).frame) : QString();
}

void MarginsPage::connectParts() {
    connect(filter_, &FilterBar::changed, this, &MarginsPage::filterChanged);
    connect(filter_, &FilterBar::left, this, [this] { table_->setFocus(); });
    connect(table_, &MarginsView::lineChosen, this, &MarginsPage::lineChosen);
    connect(table_, &MarginsView::opened, this, [this](const QModelIndex& line) {
        const std::string& frame = model_->check(line).frame;
        if (!frame.empty()) emit frameWanted(asText(frame));
    });
    connect(table_, &MarginsView::leaving, this, [this](bool forward) {
        (forward ? static_cast<QWidget*>(chart_) : profile_)->setFocus(Qt::TabFocusReason);
    });
    connect(working_, &WorkingPanel::left, this, [this] { table_->setFocus(); });
    connect(soon_, &QTimer::timeout, this, &MarginsPage::showWorking);
    connect(charts_, &Segments::chosen, this, &MarginsPage::refreshChart);
    connect(chart_, &Chart::chosen, this,
            [this](int place) { choose(chart_->data().places[place]); });
    connect(profile_, &SketchView::selected, this, &MarginsPage::choose);
    connect(profile_, &SketchView::activated, this, [this](const QString& id) {
        choose(id);
        table_->setFocus();
    });
    profile_->setTip([this](const QString& id) {
        const QModelIndex line = model_->firstOf(id.toStdString());
        return line.isValid() ? tr("%1: %2").arg(id, checkLine(model_->check(line))) : id;
    });
    for (QLabel* label : {nothing_, missing_}) {
        connect(label, &QLabel::linkActivated, this, [this](const QString& target) {
            if (target == QLatin1String("all")) {
                filter_->clear();
            } else {
                emit hullWanted(target);
            }
        });
    }
    new WhenSeen(desk_, this, [this] { refresh(); });
}

void MarginsPage::refresh() {
    const auto results = desk_.results();
    filter_->offer(*results);
    model_->show(results, speechOf(desk_.project()));
    sayWhatIsMissing();
    profile_->refresh();
    chooseFirst();
    refreshChart();
    showWorking();
}

/// Something is chosen as long as there is something to choose.
void MarginsPage::chooseFirst() {
    if (!table_->currentIndex().isValid() && model_->rowCount() > 0)
        table_->setCurrentIndex(model_->index(0, MarginsModel::thing));
}

void MarginsPage::sayWhatIsMissing() {
    const Results& results = *desk_.results();
    const int shown = model_->rowCount();
    const int total = model_->total();
    const QString joints = counted(shown, tr("1 joint"), tr("%1 joints"));
    filter_->say(joints);
    filter_->setToolTip(model_->listed() == total
                            ? counted(total, tr("1 check"), tr("%1 checks"))
                            : tr("%1 of %2 checks").arg(model_->listed()).arg(total));
    tableOrWords_->setCurrentIndex(shown > 0 ? 0 : 1);
    QString link;
    if (!results.missing.empty()) {
        link = QStringLiteral("<a href=\"%1\">%2</a>")
                   .arg(asText(results.missing.front().what).toHtmlEscaped(),
                        asText(results.missing.front().says).toHtmlEscaped());
        if (results.missing.size() > 1)
            link += QStringLiteral(", ") + tr("and %1 more").arg(results.missing.size() - 1);
    }
    missing_->setVisible(total > 0 && !link.isEmpty());
    missing_->setText(tr("Still missing for margins: %1").arg(link));
    if (shown > 0) return;
    if (total > 0) {
        nothing_->setText(tr("No check is like that. <a href=\"all\">Show all of them</a>"));
    } else if (!link.isEmpty()) {
        nothing_->setText(tr("No margins yet. Still missing: %1").arg(link));
    } else {
        nothing_->setText(tr("No margins yet: there is nothing that a load acts on."));
    }
}

void MarginsPage::filterChanged() {
    std::optional<std::string> joint;
    if (table_->currentIndex().isValid()) joint = jointOf(model_->check(table_->currentIndex()));
    model_->setFilter(filter_->filter());
    sayWhatIsMissing();
    for (int row = 0; joint && !table_->currentIndex().isValid() && row < model_->rowCount();
         ++row) {
        const QModelIndex line = model_->index(row, MarginsModel::thing);
        if (jointOf(model_->check(line)) == *joint) table_->setCurrentIndex(line);
    }
    chooseFirst();
    refreshChart();
    showWorking();
}

void MarginsPage::refreshChart() {
    const Results& results = *desk_.results();
    const MarginFilter filter = filter_->filter();
    switch (charts_->choice()) {
        case moment:
            chart_->setData(
                momentByFrame(results, filter.loadCase, speechOf(desk_.project()).units));
            break;
        case share:
            chart_->setData(shareByFrame(results, filter.loadCase));
            break;
        default:
            chart_->setData(worstByFrame(results, filter.loadCase, filter.group));
    }
    if (table_->currentIndex().isValid()) lineChosen(table_->currentIndex());
}

void MarginsPage::showChart(int which) {
    charts_->setChoice(which);
    refreshChart();
}

void MarginsPage::lineChosen(const QModelIndex& line) {
    const Check& check = model_->check(line);
    const QString frame = asText(check.frame);
    profile_->setSelected(check.group == "ballast" ? asText(check.id) : frame);
    if (const auto place = chart_->data().places.indexOf(frame); place >= 0)
        chart_->setPlace(static_cast<int>(place));
    soon_->start();
}

void MarginsPage::showWorking() {
    soon_->stop();
    const QModelIndex at = table_->currentIndex();
    workingCard_->setVisible(at.isValid());
    if (!at.isValid()) return;
    const Check check = model_->check(at);
    working_->showCheck(model_->results(), check, speechOf(desk_.project()));
}

void MarginsPage::choose(const QString& idOrFrame) {
    const QModelIndex index = model_->firstOf(idOrFrame.toStdString());
    if (!index.isValid()) return;
    table_->setCurrentIndex(index);
    table_->scrollTo(index, QAbstractItemView::PositionAtCenter);
}

bool MarginsPage::does(PageCommand command) const {
    switch (command) {
        case PageCommand::paste:
        case PageCommand::fillDown:
            return false;
        case PageCommand::find:
        case PageCommand::zoomIn:
        case PageCommand::zoomOut:
        case PageCommand::zoomToFit:
            return true;
        default:
            return model_->rowCount() > 0;
    }
}

void MarginsPage::run(PageCommand command) {
    switch (command) {
        case PageCommand::copy:
            table_->copy(false);
            return;
        case PageCommand::copyWithHeadings:
            table_->copy(true);
            return;
        case PageCommand::find:
            filter_->focusText();
            return;
        case PageCommand::findNext:
        case PageCommand::findPrevious: {
            const QModelIndex at = table_->currentIndex();
            const QModelIndex next =
                command == PageCommand::findNext ? table_->indexBelow(at) : table_->indexAbove(at);
            if (next.isValid()) table_->setCurrentIndex(next);
            return;
        }
        case PageCommand::zoomIn:
            profile_->zoomIn();
            return;
        case PageCommand::zoomOut:
            profile_->zoomOut();
            return;
        case PageCommand::zoomToFit:
            profile_->zoomToFit();
            return;
        default:
            return;
    }
}

QByteArray MarginsPage::arrangement() const {
    QByteArray state;
    QDataStream stream(&state, QIODevice::WriteOnly);
    stream << across_->saveState() << upright_->saveState() << left_->saveState();
    return state;
}

void MarginsPage::arrange(const QByteArray& state) {
    QByteArray across, upright, left;
    QDataStream stream(state);
    stream >> across >> upright >> left;
    if (stream.status() != QDataStream::Ok) return;
    across_->restoreState(across);
    upright_->restoreState(upright);
    left_->restoreState(left);
}

}  // namespace fayline
