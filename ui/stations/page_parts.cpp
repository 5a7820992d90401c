#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "find_bar.h"
#include "holds_list.h"
#include "sketch/sketch_view.h"
#include "stations/stations_page.h"
#include "stations_model.h"
#include "stations_view.h"
#include "theme/card.h"
#include "theme/segments.h"
#include "words/checks.h"
#include "words/values.h"
#include "working/working_panel.h"

namespace fayline {

QWidget* StationsPage::makeGrid() {
    auto* card = new Card;
    card->contents()->setSpacing(6);
    nothing_->setAlignment(Qt::AlignCenter);
    nothing_->setText(
        tr("No frames yet. Decide how many there are, where the first stands, and their room and "
           "space, "
           "on the <a href=\"frames.count\">Hull page</a>."));
    connect(nothing_, &QLabel::linkActivated, this, &StationsPage::hullWanted);
    connect(missing_, &QLabel::linkActivated, this, &StationsPage::hullWanted);
    connect(line_, &QLabel::linkActivated, this, [this] {
        grid_->setCurrentIndex(model_->firstRefused());
        grid_->setFocus();
    });
    line_->setForegroundRole(QPalette::PlaceholderText);
    line_->setTextFormat(Qt::RichText);
    gridOrWords_->addWidget(grid_);
    gridOrWords_->addWidget(nothing_);
    auto* showing = new QHBoxLayout;
    auto* words = new QLabel(tr("Show:"));
    words->setForegroundRole(QPalette::PlaceholderText);
    sets_->setAccessibleName(tr("Columns shown"));
    showing->addWidget(words, 0, Qt::AlignTop);
    showing->addWidget(sets_, 1);
    connect(sets_, &Segments::chosen, this,
            [this](int set) { showSet(static_cast<ColumnSet>(set)); });
    card->contents()->addLayout(showing);
    card->contents()->addWidget(missing_);
    card->contents()->addWidget(gridOrWords_, 1);
    card->contents()->addWidget(find_);
    card->contents()->addWidget(line_);
    return card;
}

QWidget* StationsPage::makeSide() {
    section_->setFrameShape(QFrame::NoFrame);
    section_->setMinimumHeight(120);
    sectionCard_->contents()->addWidget(section_);
    connect(all_, &QPushButton::clicked, this, &StationsPage::openDetails);
    holdsCard_->contents()->addWidget(holds_, 1);
    holdsCard_->contents()->addWidget(all_, 0, Qt::AlignLeft);
    auto* pair = new QSplitter(Qt::Vertical);
    pair->setHandleWidth(12);
    pair->setChildrenCollapsible(false);
    pair->addWidget(sectionCard_);
    pair->addWidget(holdsCard_);
    pair->setSizes({270, 250});

    auto* workingCard = new Card(tr("Working"));
    workingCard->contents()->addWidget(working_);
    auto* detailsCard = new Card(tr("All decisions here"));
    auto* back = new QPushButton(tr("‹ &Back"));
    connect(back, &QPushButton::clicked, this, [this] { showSide(sectionAndHolds); });
    details_->setWidgetResizable(true);
    details_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    details_->setFrameShape(QFrame::NoFrame);
    detailsCard->contents()->addWidget(back, 0, Qt::AlignLeft);
    detailsCard->contents()->addWidget(details_, 1);
    side_->addWidget(pair);
    side_->addWidget(workingCard);
    side_->addWidget(detailsCard);
    fitSide();
    return side_;
}

void StationsPage::connectParts() {
    connect(grid_, &StationsView::frameChosen, this, &StationsPage::frameChosen);
    connect(grid_, &StationsView::said, this, &StationsPage::say);
    connect(grid_, &StationsView::stopped, this, &Page::stopped);
    connect(grid_, &StationsView::leaving, this, [this](bool forward) {
        (forward ? static_cast<QWidget*>(section_) : profile_)->setFocus(Qt::TabFocusReason);
    });
    connect(model_, &QAbstractItemModel::dataChanged, this,
            [this] { say(grid_->currentIndex().data(StationsModel::refusedRole).toString()); });
    connect(profile_, &SketchView::selected, this, &StationsPage::sketchChose);
    connect(profile_, &SketchView::activated, this, [this](const QString& id) {
        sketchChose(id);
        const Column column = id.startsWith(QLatin1Char('K')) ? Column::diameter : Column::floor;
        if (!isShown(column, grid_->shownSet())) showSet(ColumnSet::overview);
        grid_->setCurrentIndex(
            model_->index(std::max(0, model_->rowOf(frame())), static_cast<int>(column)));
        grid_->setFocus();
    });
    const auto openId = [this](const QString& id) {
        const Check* worst =
            worstOf(*desk_.results(), {id.toStdString()}, speechOf(desk_.project()).basis);
        if (worst != nullptr) openWorking(*worst);
    };
    connect(section_, &SketchView::activated, this, openId);
    profile_->setTip([this](const QString& id) { return tipFor(id); });
    section_->setTip([this](const QString& id) { return tipFor(id); });
    connect(holds_, &HoldsList::workingWanted, this, &StationsPage::openWorking);
    connect(holds_, &HoldsList::cureWanted, this, [this](const Typed& typed) {
        if (const auto done = desk_.decide(typed); !done)
            emit stopped(namedSentence(done.error()), {});
    });
    connect(working_, &WorkingPanel::left, this, [this] { showSide(sectionAndHolds); });
    connect(find_, &FindBar::searched, this, &StationsPage::search);
    connect(find_, &FindBar::closed, this, [this] { grid_->setFocus(); });
}

}  // namespace fayline
