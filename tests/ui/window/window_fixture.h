#pragma once

#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QMenu>
#include <QMenuBar>
#include <QTemporaryDir>
#include <QTest>

#include "forms/hull_page.h"
#include "main_window.h"
#include "notice_bar.h"
#include "printing.h"
#include "services.h"
#include "stations/stations_page.h"
#include "stations_model.h"
#include "stations_view.h"
#include "top_bar.h"

namespace fayline::test {

class WindowTest : public testing::Test {
  protected:
    WindowTest()
        : settings(state.path(), state.path()), theme(*qApp), window(services(), settings, theme) {
        window.show();
        window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    }

    void openDemo() { ASSERT_TRUE(window.openFile(file.path())); }

    QList<QAction*> actions(const QMenu* menu = nullptr) {
        QList<QAction*> all;
        for (QAction* action : menu == nullptr ? window.menuBar()->actions() : menu->actions()) {
            if (action->menu() != nullptr) {
                all.append(actions(action->menu()));
            } else if (!action->isSeparator()) {
                all.append(action);
            }
        }
        return all;
    }
    /// The menu item whose text begins so, access keys left out.
    QAction* action(const QString& words) {
        for (QAction* each : actions()) {
            if (QString(each->text()).remove(QLatin1Char('&')).startsWith(words)) return each;
        }
        return nullptr;
    }
    QModelIndex at(const char* frame, Column column) {
        StationsModel& model = window.stations().model();
        return model.index(model.rowOf(QString::fromLatin1(frame)), static_cast<int>(column));
    }

    QTemporaryDir state;
    DemoFile file;
    Settings settings;
    Theme theme;
    MainWindow window;
};

}  // namespace fayline::test
