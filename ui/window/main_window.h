#pragma once

#include <QMainWindow>
#include <functional>

#include "desk/desk.h"
#include "desk/page.h"
#include "settings.h"
#include "theme/theme.h"
#include "window/run.h"

class QMenu;
class QStackedWidget;

namespace fayline {

class BenchPage;
class HullPage;
class MarginsPage;
class MetalPage;
class NoticeBar;
class Rail;
class SheetsPage;
class StartPage;
class StationsPage;
class TopBar;

/// The one window: rail, top bar, notice, pages, menus.
class MainWindow : public QMainWindow {
    Q_OBJECT

  public:
    enum PageNumber { hullPage, stationsPage, marginsPage, sheetsPage, metalPage, benchPage };

    MainWindow(WindowServices services, Settings& settings, Theme& theme,
               QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Opens a project; a notice says why when it cannot.
    bool openFile(const QString& path);
    /// Makes a project at a path from steps, or says why not.
    bool createFile(const QString& path, const ResultAll<std::vector<Step>>& steps);
    void showPage(PageNumber page);
    /// Writes the calculation record of a frame, or with no frame of the whole hull.
    bool saveRecord(const QString& frame, const QString& path);

    [[nodiscard]] Desk& desk() { return desk_; }
    [[nodiscard]] HullPage& hull() { return *hull_; }
    [[nodiscard]] StationsPage& stations() { return *stations_; }
    [[nodiscard]] MarginsPage& margins() { return *margins_; }
    [[nodiscard]] SheetsPage& sheets() { return *sheets_; }
    [[nodiscard]] MetalPage& metal() { return *metal_; }
    [[nodiscard]] BenchPage& bench() { return *bench_; }
    [[nodiscard]] NoticeBar& notice() { return *notice_; }
    [[nodiscard]] TopBar& topBar() { return *top_; }
    [[nodiscard]] const WindowServices& services() const { return services_; }

  protected:
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    void layOut();
    void connectParts();
    void makeMenus();
    void makeFileMenu();
    void makeEditMenu();
    void makeViewMenu();
    void makeColumnsMenu(QMenu* menu);
    void makeHelpMenu();
    QAction* add(QMenu* menu, const QString& words, const QList<QKeySequence>& keys,
                 std::function<void()> deed);
    QAction* addPageCommand(QMenu* menu, const QString& words, const QList<QKeySequence>& keys,
                            PageCommand command);
    [[nodiscard]] Page* page() const;
    [[nodiscard]] QString worstFrame() const;
    void settlePages();
    void showField(const QString& what);

    void projectChanged();
    void refreshActions();
    void fillRecent();
    void showTrouble();
    void noticeAboutFile();

    void newProject();
    void newFromOffsets();
    void open();
    void openRecent(const QString& path);
    void demo();
    void saveCopy();
    void askAndSaveRecord(const QString& frame);
    void closeProject();
    bool letGo();
    QString askForNewFile(const QString& title, const QString& name);

    void undo();
    void redo();
    void goToWorst();
    void showShortcuts();
    void showAbout();
    void showCautions();

    WindowServices services_;
    Settings& settings_;
    Theme& theme_;
    Desk desk_;
    QAction* undo_;
    QAction* redo_;
    QMenu* recent_ = nullptr;
    QList<QAction*> needProject_;
    std::vector<std::pair<QAction*, PageCommand>> pageCommands_;
    Rail* rail_;
    TopBar* top_;
    NoticeBar* notice_;
    QStackedWidget* stack_;
    StartPage* start_;
    HullPage* hull_;
    StationsPage* stations_;
    MarginsPage* margins_;
    SheetsPage* sheets_;
    MetalPage* metal_;
    BenchPage* bench_;
    std::vector<Page*> pages_;  ///< in the order of the rail
    bool troubleShown_ = false;
};

}  // namespace fayline
