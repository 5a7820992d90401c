#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QTest>

#include "desk/desk.h"
#include "printing.h"
#include "services.h"
#include "stations_model.h"
#include "stations_view.h"

namespace fayline::test {

/// The grid on the demo hull, in a window of its own.
class GridTest : public testing::Test {
  protected:
    GridTest() : desk(deskSetup()), model(desk), view(model) {
        QObject::connect(&desk, &Desk::resultsChanged, &model, &StationsModel::refresh);
        EXPECT_TRUE(desk.open(file.path()));
        view.resize(1000, 500);
        view.show();
        view.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&view));
        view.setFocus();
    }

    QModelIndex at(const char* frame, Column column) {
        return model.index(model.rowOf(QString::fromLatin1(frame)), static_cast<int>(column));
    }
    QString shown(const char* frame, Column column) {
        return at(frame, column).data(Qt::DisplayRole).toString();
    }
    void go(const char* frame, Column column) { view.setCurrentIndex(at(frame, column)); }
    void select(const QModelIndex& from, const QModelIndex& to) {
        view.setCurrentIndex(from);
        view.selectionModel()->select(QItemSelection(from, to),
                                      QItemSelectionModel::ClearAndSelect);
    }
    /// Types into the chosen cell; the first letter opens the editor.
    void type(const QString& text) {
        for (const QChar letter : text) {
            QWidget* to =
                view.openEditor() != nullptr ? static_cast<QWidget*>(view.openEditor()) : &view;
            QTest::keyClick(to, letter.toLatin1());
        }
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QWidget* to =
            view.openEditor() != nullptr ? static_cast<QWidget*>(view.openEditor()) : &view;
        QTest::keyClick(to, key, modifiers);
    }
    void paste(const QString& text) {
        QGuiApplication::clipboard()->setText(text);
        view.paste();
    }

    DemoFile file;
    Desk desk;
    StationsModel model;
    StationsView view;
};

}  // namespace fayline::test
