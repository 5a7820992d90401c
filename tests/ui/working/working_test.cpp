#include <gtest/gtest.h>

#include <QApplication>
#include <QClipboard>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTextBrowser>

#include "desk/desk.h"
#include "printing.h"
#include "services.h"
#include "theme/colours.h"
#include "words/checks.h"
#include "working/working_panel.h"

namespace fayline {
namespace {

class WorkingTest : public testing::Test {
  protected:
    WorkingTest() : desk(test::deskSetup()) { EXPECT_TRUE(desk.open(file.path())); }

    const Check& checkOf(const char* id, LimitStateKind kind, Basis basis) {
        for (const Check* check : checksOf(*desk.results(), id)) {
            if (check->limitState == kind && check->basis == basis) return *check;
        }
        throw std::runtime_error("no such check");
    }
    Speech speech() { return speechOf(desk.project()); }

    test::DemoFile file;
    Desk desk;
};

TEST_F(WorkingTest, beginsWithTheMarginInPlainWords) {
    const Check& check = checkOf("K.4", LimitStateKind::washer, Basis::us);
    const QString text = workingText(workingOf(*desk.results(), check), speech());
    const QStringList lines = text.split(QLatin1Char('\n'));
    EXPECT_EQ(lines[0], QStringLiteral("Ballast bolt K.4: washer"));
    EXPECT_TRUE(lines[1].startsWith(marginWords(check) + QStringLiteral(", short")))
        << lines[1].toStdString();
    EXPECT_TRUE(lines[2].startsWith(QStringLiteral("It must carry "))) << lines[2].toStdString();
    EXPECT_TRUE(lines[2].endsWith(QStringLiteral("That is too little.")));
}

TEST_F(WorkingTest, showsEveryFigureWithItsSourceAndStanding) {
    for (const Check* check : desk.results()->worstFirst) {
        const auto trace = explain(*desk.results(), *check);
        if (!trace) continue;
        const QString text = workingText(workingOf(*desk.results(), *check), speech());
        EXPECT_TRUE(text.contains(QString::fromStdString(trace->formula)));
        EXPECT_TRUE(text.contains(QString::fromStdString(trace->clause)));
        for (const TraceLine& line : trace->lines) {
            EXPECT_TRUE(text.contains(QString::fromStdString(line.meaning))) << line.meaning;
            EXPECT_TRUE(text.contains(QString::fromStdString(line.source))) << line.source;
        }
        for (const std::string& note : trace->notes)
            EXPECT_TRUE(text.contains(QString::fromStdString(note)));
    }
}

TEST_F(WorkingTest, timberStandsUnderBothBasesSideBySide) {
    const Check& us = checkOf("K.4", LimitStateKind::washer, Basis::us);
    const Working working = workingOf(*desk.results(), us);
    ASSERT_TRUE(working.other);
    EXPECT_EQ(working.other->basis, Basis::ec5);
    const QString html = workingHtml(working, speech(), paperPalette());
    const qsizetype first = html.indexOf(QStringLiteral("US (leads)"));
    const qsizetype second = html.indexOf(QStringLiteral("<b>Eurocode 5</b>"));
    EXPECT_GT(first, 0);
    EXPECT_GT(second, first);
    EXPECT_TRUE(html.contains(marginWords(*working.other)));
    EXPECT_FALSE(
        workingOf(*desk.results(), checkOf("K.4", LimitStateKind::metal, Basis::metal)).other);
}

TEST_F(WorkingTest, figuresAreInTheBuildersUnits) {
    const Check check = checkOf("K.4", LimitStateKind::washer, Basis::us);
    EXPECT_TRUE(
        workingText(workingOf(*desk.results(), check), speech()).contains(QStringLiteral(" lb")));
    ASSERT_TRUE(desk.decide({{"hull.units", "millimetres"}}));
    const QString text = workingText(
        workingOf(*desk.results(), checkOf("K.4", LimitStateKind::washer, Basis::us)), speech());
    EXPECT_TRUE(text.contains(QStringLiteral(" kN")));
    EXPECT_FALSE(text.contains(QStringLiteral(" psi")));
}

TEST_F(WorkingTest, htmlIsEscaped) {
    Working working;
    working.check = checkOf("K.4", LimitStateKind::washer, Basis::us);
    working.check.clause = "a < b & c";
    const QString html = workingHtml(working, speech(), paperPalette());
    EXPECT_TRUE(html.contains(QStringLiteral("a &lt; b &amp; c")));
}

TEST_F(WorkingTest, panelFollowsAnEditAndLeavesWhenTheCheckIsGone) {
    WorkingPanel panel;
    panel.showCheck(desk.results(), checkOf("K.4", LimitStateKind::washer, Basis::us), speech());
    const QString before = panel.plainText();
    ASSERT_TRUE(desk.decide({{"K.4.washer_diameter", "3 1/2 in"}}));
    panel.follow(desk.results(), speech());
    EXPECT_NE(panel.plainText(), before);
    EXPECT_TRUE(panel.plainText().startsWith(QStringLiteral("Ballast bolt K.4: washer")));

    QSignalSpy left(&panel, &WorkingPanel::left);
    ASSERT_TRUE(desk.decide({{"bolts.count", "3"}}));
    panel.follow(desk.results(), speech());
    EXPECT_EQ(left.size(), 1);
    EXPECT_TRUE(panel.plainText().isEmpty());
}

TEST_F(WorkingTest, copiesAsTextAndLeadsToTheOtherChecks) {
    WorkingPanel panel;
    panel.showCheck(desk.results(), checkOf("K.4", LimitStateKind::washer, Basis::us), speech());
    for (auto* button : panel.findChildren<QPushButton*>()) {
        if (button->text().contains(QStringLiteral("opy"))) button->click();
    }
    EXPECT_EQ(QApplication::clipboard()->text(), panel.plainText());
    auto* text = panel.findChild<QTextBrowser*>();
    const QString before = panel.plainText();
    emit text->anchorClicked(QUrl(QStringLiteral("check:0")));
    EXPECT_NE(panel.plainText(), before);
    emit text->anchorClicked(QUrl(QStringLiteral("check:999")));
    emit text->anchorClicked(QUrl(QStringLiteral("http://elsewhere")));
    QSignalSpy left(&panel, &WorkingPanel::left);
    QTest::keyClick(text, Qt::Key_Escape);
    EXPECT_EQ(left.size(), 1);
}

}  // namespace
}  // namespace fayline
