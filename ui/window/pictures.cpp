#include "window/pictures.h"

#include <QApplication>
#include <QEventLoop>
#include <QPixmap>
#include <QTemporaryDir>

#include "forms/hull_page.h"
#include "main_window.h"
#include "margins/margins_page.h"
#include "notice_bar.h"
#include "sheets/sheets_page.h"
#include "stations/stations_page.h"

namespace fayline {
namespace {

Problem failed(const QString& where, const QString& what, const char* allowed) {
    return {"picture.failed", where.toStdString(), what.toStdString(), allowed};
}

/// Lets layouts settle and pending news arrive.
void rest() {
    for (int i = 0; i < 12; ++i) QApplication::processEvents(QEventLoop::AllEvents, 20);
}

MainWindow::PageNumber pageNamed(const QString& name) {
    static const QStringList names{QStringLiteral("hull"),    QStringLiteral("stations"),
                                   QStringLiteral("margins"), QStringLiteral("sheets"),
                                   QStringLiteral("metal"),   QStringLiteral("bench")};
    return static_cast<MainWindow::PageNumber>(qMax(0, static_cast<int>(names.indexOf(name))));
}

Result<void> save(const WindowServices& services, Settings& settings, Theme& theme,
                  const PictureWish& wish) {
    theme.setLook(wish.dark ? Look::dark : Look::light);
    theme.setTextSize(wish.textSize);
    MainWindow window(services, settings, theme);
    window.resize(wish.size);
    if (!wish.project.isEmpty() && !window.openFile(wish.project))
        return tl::unexpected(failed(wish.project, window.notice().says(), "a project file"));
    if (!wish.page.isEmpty()) window.showPage(pageNamed(wish.page));
    window.show();
    rest();
    if (wish.page == QLatin1String("hull"))
        window.hull().showPart(static_cast<HullPage::Part>(wish.part));
    if (wish.page == QLatin1String("stations") && wish.part > 0)
        window.stations().showSet(static_cast<ColumnSet>(wish.part));
    if (wish.page == QLatin1String("margins") && wish.part > 0)
        window.margins().showChart(wish.part);
    if (!wish.frame.isEmpty() && wish.page == QLatin1String("margins")) {
        window.margins().choose(wish.frame);
    } else if (!wish.frame.isEmpty() && wish.page == QLatin1String("sheets")) {
        if (!window.sheets().choose(wish.frame.toStdString()))
            return tl::unexpected(failed(wish.frame, QStringLiteral("there is no such sheet"),
                                         "a sheet of the project"));
    } else if (!wish.frame.isEmpty()) {
        window.stations().setFrame(wish.frame);
        if (window.stations().frame() != wish.frame)
            return tl::unexpected(failed(wish.frame, QStringLiteral("there is no such frame"),
                                         "a frame of the project"));
    }
    if (wish.working && !window.stations().showWorking()) {
        return tl::unexpected(failed(wish.frame, QStringLiteral("nothing is checked at this frame"),
                                     "a frame with a ballast bolt"));
    }
    rest();
    if (!window.grab().save(wish.picture, "PNG"))
        return tl::unexpected(failed(wish.picture, QStringLiteral("cannot be written"),
                                     "a PNG file in a folder that is there"));
    window.close();
    return {};
}

}  // namespace

Result<void> savePictures(QApplication& application, const WindowServices& services,
                          const std::vector<PictureWish>& wishes) {
    const QTemporaryDir folder;
    Settings settings(folder.path(), folder.path());
    Theme theme(application);
    for (const PictureWish& wish : wishes) {
        if (auto saved = save(services, settings, theme, wish); !saved) return saved;
    }
    return {};
}

}  // namespace fayline
