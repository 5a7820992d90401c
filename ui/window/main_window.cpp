#include "main_window.h"

#include <QAction>
#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QMimeData>
#include <QScreen>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "bench/bench_page.h"
#include "forms/hull_page.h"
#include "margins/margins_page.h"
#include "metal/metal_page.h"
#include "notice_bar.h"
#include "rail.h"
#include "sheets/sheets_page.h"
#include "start_page.h"
#include "stations/stations_page.h"
#include "top_bar.h"
#include "words/checks.h"
#include "words/values.h"

namespace fayline {
namespace {

QString droppedFile(const QMimeData& data) {
    const QList<QUrl> urls = data.urls();
    if (urls.size() != 1 || !urls.front().isLocalFile()) return {};
    const QString path = urls.front().toLocalFile();
    return path.endsWith(QLatin1String(".fayline"), Qt::CaseInsensitive) ? path : QString();
}

}  // namespace

MainWindow::MainWindow(WindowServices services, Settings& settings, Theme& theme, QWidget* parent)
    : QMainWindow(parent),
      services_(std::move(services)),
      settings_(settings),
      theme_(theme),
      desk_({services_.catalogue, services_.program, services_.who, services_.now}),
      undo_(new QAction(this)),
      redo_(new QAction(this)),
      rail_(new Rail),
      top_(new TopBar(desk_, undo_, redo_)),
      notice_(new NoticeBar),
      stack_(new QStackedWidget),
      start_(new StartPage),
      hull_(new HullPage(desk_)),
      stations_(new StationsPage(desk_)),
      margins_(new MarginsPage(desk_)),
      sheets_(new SheetsPage(desk_, asText(services_.program))),
      metal_(new MetalPage(desk_)),
      bench_(new BenchPage(desk_, {services_.catalogue, services_.readJoint, services_.program})),
      pages_{hull_, stations_, margins_, sheets_, metal_, bench_} {
    setObjectName(QStringLiteral("window"));
    setAcceptDrops(true);
    layOut();
    makeMenus();
    connectParts();
    resize(1360, 860);
    restoreGeometry(settings_.geometry());
    stations_->arrange(settings_.arrangement(QStringLiteral("stations")));
    margins_->arrange(settings_.arrangement(QStringLiteral("margins")));
    sheets_->arrange(settings_.arrangement(QStringLiteral("sheets")));
    bench_->arrange(settings_.arrangement(QStringLiteral("bench")));
    projectChanged();
}

MainWindow::~MainWindow() = default;

void MainWindow::layOut() {
    rail_->addPage(tr("Hull"), Rail::Sign::hull);
    rail_->addPage(tr("Stations"), Rail::Sign::stations);
    rail_->addPage(tr("Margins"), Rail::Sign::margins);
    rail_->addPage(tr("Sheets"), Rail::Sign::sheets);
    rail_->addPage(tr("Metal"), Rail::Sign::metal);
    rail_->addPage(tr("One joint"), Rail::Sign::bench, false);
    stack_->addWidget(start_);
    for (Page* each : pages_) stack_->addWidget(each);
    auto* middle = new QWidget;
    auto* across = new QHBoxLayout(middle);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(0);
    across->addWidget(rail_);
    auto* upright = new QVBoxLayout;
    upright->setSpacing(0);
    upright->addWidget(top_);
    upright->addWidget(notice_);
    upright->addWidget(stack_, 1);
    across->addLayout(upright, 1);
    setCentralWidget(middle);
    setMinimumSize(900, 560);
}

void MainWindow::connectParts() {
    connect(rail_, &Rail::chosen, this, [this](int number) {
        settlePages();
        showPage(static_cast<PageNumber>(number));
    });
    connect(top_, &TopBar::countsClicked, this, &MainWindow::goToWorst);
    connect(top_, &TopBar::decided, this, [this](const QString& what, const QString& text) {
        settlePages();
        if (const auto done = desk_.decide({{what.toStdString(), text.toStdString()}}); !done)
            notice_->showRefusal(namedSentence(done.error()));
    });
    for (Page* each : pages_) {
        connect(each, &Page::stopped, this,
                [this](const QString& says, const QStringList& details) {
                    notice_->showRefusal(says, details);
                });
    }
    connect(hull_, &HullPage::stationsWanted, this, [this](const QString& frame) {
        showPage(stationsPage);
        if (!frame.isEmpty()) stations_->setFrame(frame);
    });
    connect(stations_, &StationsPage::hullWanted, this, &MainWindow::showField);
    connect(margins_, &MarginsPage::hullWanted, this, &MainWindow::showField);
    connect(sheets_, &SheetsPage::hullWanted, this, &MainWindow::showField);
    connect(metal_, &MetalPage::hullWanted, this, &MainWindow::showField);
    connect(margins_, &MarginsPage::frameWanted, this, [this](const QString& frame) {
        showPage(stationsPage);
        stations_->setFrame(frame);
    });
    const auto say = [this](const QString& says) { notice_->showNotice(says); };
    connect(sheets_, &SheetsPage::done, this, say);
    connect(metal_, &MetalPage::done, this, say);
    connect(bench_, &BenchPage::done, this, say);
    connect(bench_, &BenchPage::cautionsWanted, this, &MainWindow::showCautions);
    connect(bench_, &BenchPage::historyChanged, this, &MainWindow::refreshActions);
    connect(margins_, &MarginsPage::recordWanted, this, &MainWindow::askAndSaveRecord);
    connect(stations_, &StationsPage::cautionsWanted, this, &MainWindow::showCautions);
    connect(margins_, &MarginsPage::cautionsWanted, this, &MainWindow::showCautions);
    connect(sheets_, &SheetsPage::cautionsWanted, this, &MainWindow::showCautions);
    connect(metal_, &MetalPage::cautionsWanted, this, &MainWindow::showCautions);
    connect(start_, &StartPage::newWanted, this, &MainWindow::newProject);
    connect(start_, &StartPage::offsetsWanted, this, &MainWindow::newFromOffsets);
    connect(start_, &StartPage::openWanted, this, &MainWindow::open);
    connect(start_, &StartPage::demoWanted, this, &MainWindow::demo);
    connect(start_, &StartPage::recentWanted, this, &MainWindow::openRecent);
    connect(&desk_, &Desk::projectArrived, this, &MainWindow::projectChanged);
    connect(&desk_, &Desk::resultsChanged, this, &MainWindow::refreshActions);
    connect(&desk_, &Desk::decisionsChanged, notice_, &NoticeBar::clearRefusal);
    connect(&desk_, &Desk::troubleChanged, this, &MainWindow::showTrouble);
}

Page* MainWindow::page() const {
    const auto front = std::find(pages_.begin(), pages_.end(), stack_->currentWidget());
    return front == pages_.end() ? nullptr : *front;
}

void MainWindow::settlePages() {
    for (Page* each : pages_) each->settle();
}

void MainWindow::showPage(PageNumber number) {
    if (!desk_.isOpen() && number != benchPage) return;
    stack_->setCurrentWidget(pages_[static_cast<std::size_t>(number)]);
    rail_->choose(number);
    page()->setFocus(Qt::OtherFocusReason);
    refreshActions();
}

void MainWindow::showField(const QString& what) {
    showPage(hullPage);
    hull_->showField(what);
}

void MainWindow::projectChanged() {
    const bool open = desk_.isOpen();
    rail_->setPagesEnabled(open);
    if (open) {
        setWindowTitle(tr("%1 – Fayline").arg(QFileInfo(desk_.path()).fileName()));
        setWindowFilePath(desk_.path());
        stations_->setFrame(worstFrame());
        showPage(desk_.results()->worstFirst.empty() ? hullPage : stationsPage);
    } else {
        setWindowTitle(tr("Fayline"));
        setWindowFilePath({});
        stack_->setCurrentWidget(start_);
    }
    start_->setRecent(settings_.recent());
    refreshActions();
}

/// The frame with the worst margin under the leading basis; empty while nothing is checked.
QString MainWindow::worstFrame() const {
    const Basis leading = speechOf(desk_.project()).basis;
    for (const Check* check : desk_.results()->worstFirst) {
        if (counts(*check, leading) && !check->frame.empty()) return asText(check->frame);
    }
    return {};
}

void MainWindow::goToWorst() {
    const QString frame = worstFrame();
    if (frame.isEmpty()) return;
    showPage(stationsPage);
    stations_->setFrame(frame);
}

void MainWindow::showTrouble() {
    const auto trouble = desk_.trouble();
    if (!trouble) {
        if (troubleShown_) notice_->clear();
        troubleShown_ = false;
        return;
    }
    troubleShown_ = true;
    notice_->showNotice(asText(trouble->line()), {},
                        {{tr("Try again"), [this] { desk_.retrySaving(); }},
                         {tr("Save a copy…"), [this] { saveCopy(); }}},
                        false);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    settlePages();
    if (!letGo()) {
        event->ignore();
        return;
    }
    settings_.setGeometry(saveGeometry());
    settings_.setArrangement(QStringLiteral("stations"), stations_->arrangement());
    settings_.setArrangement(QStringLiteral("margins"), margins_->arrangement());
    settings_.setArrangement(QStringLiteral("sheets"), sheets_->arrangement());
    settings_.setArrangement(QStringLiteral("bench"), bench_->arrangement());
    desk_.close();
    event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (!droppedFile(*event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    const QString path = droppedFile(*event->mimeData());
    if (path.isEmpty()) return;
    event->acceptProposedAction();
    openFile(path);
}

}  // namespace fayline
