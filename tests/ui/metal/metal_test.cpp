#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QClipboard>
#include <QFile>
#include <QGuiApplication>
#include <QLabel>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

#include "derive/paper.h"
#include "desk/desk.h"
#include "metal/metal_page.h"
#include "metal_model.h"
#include "printing.h"
#include "reports.h"
#include "services.h"
#include "session.h"

namespace fayline {
namespace {

class Metal : public testing::Test {
  protected:
    Metal() : desk(test::deskSetup()), page(desk) {
        test::decideFastenings(file.path());
        EXPECT_TRUE(desk.open(file.path()));
        page.resize(1200, 700);
        page.show();
    }
    test::DemoFile file;
    Desk desk;
    MetalPage page;
};

TEST_F(Metal, countsWhatTheHolesNeed) {
    QAbstractItemModelTester tester(&page.model(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    const auto holes = allHoles(*desk.results());
    int fastenings = 0;
    for (const TakeOffLine& line : page.model().takeOff().lines)
        fastenings += line.fitting ? 0 : line.count;
    EXPECT_EQ(fastenings, static_cast<int>(holes.size()));
    EXPECT_TRUE(page.totals().startsWith(QString::number(holes.size())))
        << page.totals().toStdString();
    ASSERT_TRUE(desk.decide({{"plank.count", "3"}}));
    EXPECT_TRUE(page.totals().startsWith(QString::number(allHoles(*desk.results()).size())))
        << "an edit is followed while the page is in front";
}

TEST_F(Metal, theFileIsTheSameAsTheCommandLinesOne) {
    QSignalSpy done(&page, &MetalPage::done);
    const QString path = file.folder() + QStringLiteral("/metal.csv");
    ASSERT_TRUE(page.saveCsv(path));
    EXPECT_EQ(done.size(), 1);
    QFile written(path);
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    cli::Session session;
    session.project = desk.project();
    session.results = desk.results();
    session.catalogue = test::catalogue();
    const QStringList here = QString::fromUtf8(written.readAll()).split(QStringLiteral("\r\n"));
    const QStringList there = asText(cli::metalCsv(session)).split(QStringLiteral("\r\n"));
    ASSERT_EQ(here.size(), there.size());
    for (qsizetype i = 0; i < here.size(); ++i) EXPECT_EQ(here[i], there[i]);
}

TEST_F(Metal, aFileThatCannotBeWrittenIsToldOf) {
    QSignalSpy stopped(&page, &Page::stopped);
    EXPECT_FALSE(page.saveCsv(file.folder() + QStringLiteral("/no/such/folder/metal.csv")));
    EXPECT_EQ(stopped.size(), 1);
}

TEST_F(Metal, rowsAreCopied) {
    page.table().selectRow(0);
    page.run(PageCommand::copyWithHeadings);
    const QStringList lines = QGuiApplication::clipboard()->text().split(QLatin1Char('\n'));
    ASSERT_EQ(lines.size(), 3);
    EXPECT_TRUE(lines[0].startsWith(QStringLiteral("What\tMetal\tSize")));
    EXPECT_EQ(lines[1].split(QLatin1Char('\t')).size(), page.model().columnCount());
}

TEST_F(Metal, anEmptyHullSaysWhereToBegin) {
    ASSERT_TRUE(desk.create(file.folder() + QStringLiteral("/new.fayline"), {}));
    EXPECT_FALSE(page.table().isVisible());
    EXPECT_FALSE(page.does(PageCommand::copy));
    bool said = false;
    for (auto* label : page.findChildren<QLabel*>())
        said = said ||
               (label->isVisible() && label->text().contains(QStringLiteral("Nothing to order")));
    EXPECT_TRUE(said);
}

}  // namespace
}  // namespace fayline
