#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QPrinter>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <set>

#include "derive/paper.h"
#include "desk/desk.h"
#include "paper_view.h"
#include "printing.h"
#include "services.h"
#include "sheets/sheets_page.h"
#include "sheets_model.h"
#include "words/values.h"

namespace fayline {
namespace {

constexpr int patience_ms = 20000;

class Sheets : public testing::Test {
  protected:
    Sheets() : desk(test::deskSetup()), page(desk, QStringLiteral("fayline test")) {
        test::decideFastenings(file.path());
        EXPECT_TRUE(desk.open(file.path()));
        page.resize(1200, 760);
        page.show();
        page.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
    }
    QString revision(const char* id) {
        return page.model().index(page.model().rowOf(id), SheetsModel::revision).data().toString();
    }
    test::DemoFile file;
    Desk desk;
    SheetsPage page;
};

TEST_F(Sheets, listsEverySheetAndLearnsEveryRevision) {
    QAbstractItemModelTester tester(&page.model(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    const auto names = sheetNames(desk.project(), *desk.results());
    EXPECT_EQ(page.model().rowCount(), static_cast<int>(names.size()));
    ASSERT_TRUE(QTest::qWaitFor([&] { return page.model().firstUnknown() < 0; }, patience_ms));
    std::set<QString> codes;
    for (const SheetName& name : names) codes.insert(revision(name.id.c_str()));
    EXPECT_EQ(codes.size(), names.size()) << "no two sheets say the same";
}

TEST_F(Sheets, aRevisionFollowsItsOwnSheetAndComesBackWithUndo) {
    ASSERT_TRUE(page.choose("F18"));
    const QString before = revision("F18");
    ASSERT_TRUE(desk.decide({{"F18.heel.count", "3"}}));
    const QString after = revision("F18");
    EXPECT_NE(after, before);
    EXPECT_EQ(asText(page.preview().sheet()->revision), after.simplified());
    ASSERT_TRUE(desk.undo());
    EXPECT_EQ(revision("F18"), before);
}

TEST_F(Sheets, paperThatIsOutOfDateIsNamedUntilItIsRightAgain) {
    const auto paper = [&](const char* id) {
        return page.model().index(page.model().rowOf(id), SheetsModel::paper).data().toString();
    };
    const auto learned = [&] {
        return QTest::qWaitFor([&] { return page.model().firstUnknown() < 0; }, patience_ms);
    };
    ASSERT_TRUE(page.choose("F18"));
    ASSERT_TRUE(page.savePdf(file.folder() + QStringLiteral("/F18.pdf")));
    ASSERT_TRUE(learned());
    EXPECT_EQ(paper("F18"), QStringLiteral("as it is"));
    EXPECT_EQ(paper("F19"), QString()) << "never put on paper";
    EXPECT_TRUE(page.model().old().empty());
    const std::string code = page.preview().sheet()->revision;
    EXPECT_EQ(desk.journal().recorded().at("sheet.F18.paper"), code);

    ASSERT_TRUE(desk.decide({{"F18.heel.count", "3"}}));
    ASSERT_TRUE(learned());
    EXPECT_EQ(paper("F18"), QStringLiteral("out of date"));
    ASSERT_EQ(page.model().old().size(), 1U);
    EXPECT_EQ(page.model().old().front().onPaper, code);
    QCoreApplication::processEvents();
    bool said = false;
    for (const auto* label : page.findChildren<QLabel*>())
        said = said || (label->isVisible() && label->text().contains(QStringLiteral("Frame F18.")));
    EXPECT_TRUE(said);

    ASSERT_TRUE(desk.undo()) << "putting on paper is nothing to be undone";
    EXPECT_TRUE(test::decided(desk, "F18.heel.count").isEmpty());
    ASSERT_TRUE(learned());
    EXPECT_EQ(paper("F18"), QStringLiteral("as it is"));

    ASSERT_TRUE(desk.decide({{"F18.heel.count", "3"}}));
    ASSERT_TRUE(desk.waitUntilSettled(patience_ms));
    desk.close();
    ASSERT_TRUE(desk.open(file.path()));
    ASSERT_TRUE(learned());
    EXPECT_EQ(paper("F18"), QStringLiteral("out of date")) << "it is kept in the file";
}

TEST_F(Sheets, theKeyboardTurnsPagesAndZooms) {
    ASSERT_TRUE(page.choose("F18"));
    ASSERT_GE(page.preview().pageCount(), 2);
    page.preview().setFocus();
    QTest::keyClick(&page.preview(), Qt::Key_PageDown);
    EXPECT_EQ(page.preview().page(), 1);
    QTest::keyClick(&page.preview(), Qt::Key_Home);
    EXPECT_EQ(page.preview().page(), 0);
    page.run(PageCommand::zoomIn);
    EXPECT_GT(page.preview().zoom(), 1.0);
    page.run(PageCommand::zoomToFit);
    EXPECT_DOUBLE_EQ(page.preview().zoom(), 1.0);
    page.run(PageCommand::zoomOut);
    EXPECT_DOUBLE_EQ(page.preview().zoom(), PaperView::leastZoom);
    EXPECT_TRUE(page.preview().accessibleDescription().contains(QStringLiteral("page 1 of")));
}

TEST_F(Sheets, paperChangesThePageAndNothingItSays) {
    ASSERT_TRUE(page.choose("keel"));
    page.setPaper(PaperSize::a4);
    const Sheet a4 = *page.preview().sheet();
    page.setPaper(PaperSize::letter);
    const Sheet letter = *page.preview().sheet();
    EXPECT_EQ(a4.revision, letter.revision);
    EXPECT_DOUBLE_EQ(a4.pages[0].drawing.size.width, 210.0);
    EXPECT_DOUBLE_EQ(letter.pages[0].drawing.size.width, 215.9);
}

TEST_F(Sheets, savesOneSheetAsPdf) {
    ASSERT_TRUE(page.choose("keel"));
    QSignalSpy done(&page, &SheetsPage::done);
    const QString path = file.folder() + QStringLiteral("/keel.pdf");
    ASSERT_TRUE(page.savePdf(path));
    EXPECT_EQ(done.size(), 1);
    QFile pdf(path);
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.read(5) == "%PDF-");
    QSignalSpy stopped(&page, &Page::stopped);
    EXPECT_FALSE(page.savePdf(file.folder() + QStringLiteral("/no/such/keel.pdf")));
    EXPECT_EQ(stopped.size(), 1);
}

TEST_F(Sheets, savesAllWithAListOrStopsWhenTold) {
    const QString folder = file.folder() + QStringLiteral("/sheets");
    ASSERT_TRUE(QDir().mkdir(folder));
    QSignalSpy done(&page, &SheetsPage::done);
    page.saveAll(folder);
    EXPECT_TRUE(page.isSaving());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !page.isSaving(); }, patience_ms));
    ASSERT_EQ(done.size(), 1);
    int drilled = 0;
    for (const SheetName& name : sheetNames(desk.project(), *desk.results())) {
        EXPECT_EQ(QFile::exists(folder + QLatin1Char('/') + asText(name.fileName)), !name.empty)
            << name.id;
        drilled += name.empty ? 0 : 1;
    }
    EXPECT_GT(drilled, 10);
    QFile list(folder + QStringLiteral("/sheets.csv"));
    ASSERT_TRUE(list.open(QIODevice::ReadOnly));
    EXPECT_TRUE(list.readLine().startsWith("sheet,file,page,side,revision"));

    const QString other = file.folder() + QStringLiteral("/part");
    ASSERT_TRUE(QDir().mkdir(other));
    page.saveAll(other);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return !QDir(other).entryList({QStringLiteral("*.pdf")}).isEmpty(); }, patience_ms));
    for (auto* button : page.findChildren<QPushButton*>()) {
        if (button->isVisible() && button->text() == QStringLiteral("S&top")) button->click();
    }
    EXPECT_FALSE(page.isSaving());
    EXPECT_LT(QDir(other).entryList({QStringLiteral("*.pdf")}).size(), drilled);
    EXPECT_FALSE(QFile::exists(other + QStringLiteral("/sheets.csv"))) << "no list of half a set";
    EXPECT_TRUE(done.back().front().toString().startsWith(QStringLiteral("Stopped")));
}

TEST_F(Sheets, aPrinterGetsWholePagesAtActualSize) {
    ASSERT_TRUE(page.choose("F18"));
    page.setPaper(PaperSize::a4);
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(file.folder() + QStringLiteral("/printed.pdf"));
    ASSERT_TRUE(page.print(printer));
    EXPECT_TRUE(printer.fullPage());
    EXPECT_NEAR(printer.pageLayout().fullRect(QPageLayout::Millimeter).width(), 210.0, 0.2);
    EXPECT_TRUE(QFile::exists(file.folder() + QStringLiteral("/printed.pdf")));
}

TEST_F(Sheets, withoutFramesItSaysSo) {
    ASSERT_TRUE(desk.create(file.folder() + QStringLiteral("/new.fayline"), {}));
    EXPECT_EQ(page.model().rowCount(), 0);
    EXPECT_FALSE(page.list().isVisible());
    EXPECT_FALSE(page.savePdf(file.folder() + QStringLiteral("/none.pdf")));
    QSignalSpy wanted(&page, &SheetsPage::hullWanted);
    for (auto* label : page.findChildren<QLabel*>()) {
        if (label->isVisible() && label->text().contains(QStringLiteral("No sheets yet")))
            emit label->linkActivated(QStringLiteral("frames.count"));
    }
    EXPECT_EQ(wanted.size(), 1);
}

}  // namespace
}  // namespace fayline
