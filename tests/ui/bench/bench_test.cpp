// The panel as its user meets it: fields, results at once, bad entries, undo, files, the hull.
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAbstractItemModelTester>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPrinter>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <QTextBrowser>
#include <QUndoStack>
#include <set>

#include "bench/bench_page.h"
#include "bench_lines.h"
#include "bench_row.h"
#include "joint/work_joint.h"
#include "joint_file.h"
#include "joint_report.h"
#include "printing.h"
#include "quantity/reading.h"
#include "services.h"
#include "sketch/sketch_view.h"
#include "words/checks.h"

namespace fayline {
namespace {

class Bench : public testing::Test {
  protected:
    Bench()
        : desk(test::deskSetup()),
          page(desk, {test::catalogue(), test::services().readJoint, "fayline test"}) {
        page.resize(1280, 800);
        page.show();
        page.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
    }
    /// Types into a field as a user does, and ends with Enter.
    void type(const std::string& path, const char* text, bool ended = true) {
        BenchRow* row = page.row(path);
        ASSERT_NE(row, nullptr) << path;
        row->entry()->setFocus();
        row->entry()->selectAll();
        if (*text == '\0') QTest::keyClick(row->entry(), Qt::Key_Delete);
        QTest::keyClicks(row->entry(), QString::fromUtf8(text));
        if (ended) QTest::keyClick(row->entry(), Qt::Key_Return);
    }
    Force lateral(Basis basis = Basis::us) {
        const JointResult& result = page.work().last()->result;
        return (basis == Basis::us ? result.us : result.ec5).lateral->state.working;
    }
    QString cell(LimitStateKind kind, int column) {
        const auto* model = page.table().model();
        const auto& lines = static_cast<const BenchModel*>(model)->lines();
        for (std::size_t i = 0; i < lines.size(); ++i) {
            if (lines[i].kind == kind)
                return model->index(static_cast<int>(i), column).data().toString();
        }
        return {};
    }
    Desk desk;
    BenchPage page;
};

TEST_F(Bench, beginsWithAnExampleWorkedUnderBothBases) {
    QAbstractItemModelTester tester(page.table().model(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_TRUE(page.work().last());
    EXPECT_TRUE(page.work().problems().empty());
    EXPECT_GE(page.table().model()->rowCount(), 5);
    EXPECT_FALSE(cell(LimitStateKind::lateral, BenchModel::us).isEmpty());
    EXPECT_FALSE(cell(LimitStateKind::lateral, BenchModel::ec5).isEmpty());
    EXPECT_TRUE(cell(LimitStateKind::lateral, BenchModel::usMargin).startsWith(QChar(0x00D7)));
    EXPECT_TRUE(page.verdict().text().contains(QStringLiteral("Eurocode 5")));
    EXPECT_TRUE(page.verdict().text().contains(QStringLiteral("governed by")));
    page.table().setCurrentIndex(page.table().model()->index(0, 0));
    EXPECT_TRUE(page.text().toPlainText().contains(QStringLiteral("C_D")))
        << page.text().toPlainText().toStdString();
    EXPECT_FALSE(page.picture().drawing().items.empty());
}

TEST_F(Bench, theResultFollowsEachLetter) {
    const Force before = lateral();
    type("members[0].thickness", "1 1/2", false);
    EXPECT_NE(lateral(), before) << "while it is being typed";
    EXPECT_EQ(page.work().last()->named.joint.members[0].thickness, inches(1.5));
    QTest::keyClick(page.row("members[0].thickness")->entry(), Qt::Key_Return);
    EXPECT_EQ(page.row("members[0].thickness")->entry()->text(), QStringLiteral("1 1/2 in"));
    type("members[0].thickness", "38 mm");
    EXPECT_EQ(page.work().last()->named.joint.members[0].thickness, millimetres(38));
}

TEST_F(Bench, aBadEntryIsToldAtItsFieldAndChangesNothing) {
    const auto result = page.work().last()->result;
    const BenchDraft draft = page.work().draft();
    const std::pair<const char*, const char*> bad[] = {{"members[0].thickness", "7 furlongs"},
                                                       {"members[1].wood", "wite oak"},
                                                       {"fastener.gauge", "No. 99"},
                                                       {"load.lateral", "ten"},
                                                       {"fastener.kind", "nail"},
                                                       {"members[1].grain", "steep"},
                                                       {"fastener.length", ""}};
    for (const auto& [path, text] : bad) {
        type(path, text);
        BenchRow* row = page.row(path);
        EXPECT_FALSE(row->objection().isEmpty()) << path;
        EXPECT_TRUE(row->objection().endsWith(QLatin1Char('.'))) << row->objection().toStdString();
        EXPECT_EQ(row->entry()->accessibleDescription(), row->objection());
        EXPECT_EQ(row->entry()->text(), QString::fromUtf8(text)) << "stays to be seen";
        EXPECT_TRUE(page.work().draft() == draft) << path;
        EXPECT_TRUE(page.work().last()->result == result) << path;
        QTest::keyClick(row->entry(), Qt::Key_Escape);
        EXPECT_TRUE(row->objection().isEmpty()) << path;
    }
    EXPECT_EQ(page.history().count(), 0);
}

TEST_F(Bench, whereTheFieldsMakeNoJointTheLastResultStaysAndSaysSo) {
    const auto result = page.work().last()->result;
    // A counterbore deeper than the plank: each alone would be a length, together they are no
    // joint.
    type("members[0].counterbore", "2");
    auto* row = page.row("members[0].counterbore");
    EXPECT_TRUE(page.work().last()->result == result);
    const bool refused = !row->objection().isEmpty();
    const bool pending = !page.work().problems().empty();
    EXPECT_TRUE(refused || pending);
    EXPECT_TRUE(refused) << "said at the field it is about";
}

TEST_F(Bench, undoAndRedoGoFieldByField) {
    const BenchDraft first = page.work().draft();
    type("members[0].thickness", "1 1/2");
    type("load.lateral", "100");
    EXPECT_EQ(page.history().count(), 2) << "letters of one entry are one step";
    EXPECT_EQ(page.history().undoText(), QStringLiteral("Load sideways"));
    page.history().undo();
    EXPECT_EQ(page.work().draft().at("load.lateral"), "60 lb");
    EXPECT_EQ(page.row("load.lateral")->entry()->text(), QStringLiteral("60 lb"));
    page.history().undo();
    EXPECT_TRUE(page.work().draft() == first);
    page.history().redo();
    page.history().redo();
    EXPECT_EQ(page.work().draft().at("load.lateral"), "100 lb");
    EXPECT_EQ(page.work().last()->named.joint.load->lateral, *readForce("100 lb", ""));
}

TEST_F(Bench, anotherKindOfFasteningBeginsWithSizesItCanBeWorkedWith) {
    for (const char* kind : {"bolt", "rivet", "drift", "wood screw"}) {
        type("fastener.kind", kind);
        EXPECT_TRUE(page.work().problems().empty())
            << kind << ": " << page.work().problems().front().line();
        EXPECT_EQ(QString::fromUtf8(kind).replace(QLatin1Char(' '), QLatin1Char('_')).toStdString(),
                  page.work().draft().at("fastener.kind"));
        EXPECT_EQ(page.row("fastener.gauge")->isVisible(), std::string(kind) == "wood screw");
    }
}

TEST_F(Bench, membersAreAddedMovedAndRemoved) {
    type("fastener.kind", "bolt");  // a screw would not reach a third
    const BenchDraft two = page.work().draft();
    page.addMember();
    ASSERT_EQ(page.work().draft().members.size(), 3U);
    ASSERT_NE(page.row("members[2].wood"), nullptr);
    EXPECT_EQ(page.work().last()->named.joint.members.size(), 3U);
    page.moveMember(0, 1);
    EXPECT_EQ(page.work().draft().at("members[1].name"), "plank");
    page.history().undo();
    EXPECT_EQ(page.work().draft().at("members[0].name"), "plank");
    page.removeMember(2);
    EXPECT_EQ(page.work().draft().members.size(), 2U);
    EXPECT_EQ(page.row("members[2].wood"), nullptr);
    page.removeMember(0);
    EXPECT_EQ(page.work().draft().members.size(), 2U) << "a joint has two at least";
    page.history().undo();
    page.history().undo();
    EXPECT_TRUE(page.work().draft() == two);
}

TEST_F(Bench, savedAndLoadedItIsTheSameJointAndTheCommandLinesResult) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("joint.json"));
    type("members[0].thickness", "1-1/4");
    type("members[1].gap", "");
    type("fastener.kind", "bolt");
    type("fastener.diameter", "1/2");
    type("fastener.head_washer.diameter", "1 1/4");
    type("fastener.point_washer.diameter", "1 1/4");
    const BenchDraft saved = page.work().draft();
    ASSERT_TRUE(page.save(path));
    const auto file = cli::readJointFile(path.toStdString(), *test::catalogue());
    ASSERT_TRUE(file) << file.error().front().line();
    const auto result = workJoint(file->joint);
    ASSERT_TRUE(result);
    EXPECT_TRUE(*result == page.work().last()->result) << "as fayline joint works it out";
    const auto moisture = moistureRows(file->joint, file->zone);
    ASSERT_TRUE(moisture);
    EXPECT_TRUE(*moisture == page.work().last()->moisture);
    page.startAfresh();
    EXPECT_FALSE(page.work().draft() == saved);
    ASSERT_TRUE(page.load(path));
    EXPECT_TRUE(page.work().draft() == saved);
    page.history().undo();
    EXPECT_TRUE(page.work().draft() == firstDraft()) << "loading is one step";
}

TEST_F(Bench, aFileThatIsNoJointIsRefusedWithItsReasonsAndNothingChanges) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("bad.json"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(R"({"members": [{"wood": "wite_oak", "thickness": 63}], "fastner": {}})");
    file.close();
    QSignalSpy stopped(&page, &Page::stopped);
    const BenchDraft before = page.work().draft();
    EXPECT_FALSE(page.load(path));
    ASSERT_EQ(stopped.size(), 1);
    EXPECT_TRUE(stopped[0][0].toString().contains(QStringLiteral("bad.json")));
    EXPECT_GE(stopped[0][1].toStringList().size(), 2);
    EXPECT_FALSE(page.load(folder.filePath(QStringLiteral("none.json"))));
    EXPECT_TRUE(page.work().draft() == before);
}

TEST_F(Bench, aChosenLimitStateShowsItsWorkingsUnderBothBases) {
    page.table().setCurrentIndex(page.table().model()->index(0, 0));
    const QString text = page.text().toPlainText();
    for (const char* words : {"US basis", "Eurocode 5", "NDS 12.3.1", "EN 1995-1-1", "from memory"})
        EXPECT_TRUE(text.contains(QString::fromLatin1(words))) << words;
    page.showPart(1);
    EXPECT_TRUE(page.text().toPlainText().contains(QStringLiteral("gives at")));
    page.showPart(2);
    EXPECT_TRUE(page.text().toPlainText().contains(QStringLiteral("winter ashore")));
    page.showPart(3);
    EXPECT_TRUE(page.text().toPlainText().contains(QStringLiteral("twists off")));
}

TEST_F(Bench, everyLimitStateAndMissingOneOfTheResultHasALine) {
    type("fastener.kind", "bolt");
    const JointResult& result = page.work().last()->result;
    std::set<LimitStateKind> kinds;
    for (const BasisResult* basis : {&result.us, &result.ec5}) {
        for (const LimitState& state : basis->states()) kinds.insert(state.kind);
        for (const MissingState& missing : basis->missing) kinds.insert(missing.kind);
    }
    std::set<LimitStateKind> shown;
    for (const BenchLine& line : static_cast<const BenchModel*>(page.table().model())->lines())
        shown.insert(line.kind);
    EXPECT_EQ(shown, kinds);
}

TEST_F(Bench, withoutALoadThereIsNoMarginAndItSaysSo) {
    type("load.lateral", "");
    type("load.axial", "");
    EXPECT_FALSE(page.work().last()->named.joint.load);
    EXPECT_TRUE(cell(LimitStateKind::lateral, BenchModel::usMargin).isEmpty());
    EXPECT_FALSE(cell(LimitStateKind::lateral, BenchModel::us).isEmpty());
    EXPECT_TRUE(page.verdict().text().contains(QStringLiteral("Give a load")));
}

TEST_F(Bench, aJointIsTakenFromTheHullWithTheLoadOfItsWorstCaseAndTheHullStays) {
    const test::DemoFile file;
    test::decideFastenings(file.path());
    ASSERT_TRUE(desk.open(file.path()));
    const auto ids = page.takable();
    ASSERT_GT(ids.size(), 20U);
    const auto step = desk.journal().tip();
    int withLoad = 0;
    for (std::size_t i = 0; i < ids.size(); i += std::max<std::size_t>(1, ids.size() / 25)) {
        ASSERT_TRUE(page.takeFromHull(ids[i])) << ids[i];
        ASSERT_TRUE(page.work().problems().empty())
            << ids[i] << ": " << page.work().problems().front().line();
        const auto checks = checksOf(*desk.results(), ids[i]);
        const auto worst = std::find_if(checks.begin(), checks.end(),
                                        [](const Check* c) { return c->margin.has_value(); });
        if (worst == checks.end()) continue;
        for (const Check* check : checks) {
            if (check->loadCase != (*worst)->loadCase || !check->working) continue;
            const JointResult& result = page.work().last()->result;
            for (const LimitState& state :
                 (check->basis == Basis::ec5 ? result.ec5 : result.us).states()) {
                if (state.kind != check->limitState) continue;
                EXPECT_NEAR(state.working.si(), check->working->si(), 1e-6 * check->working->si())
                    << ids[i] << " " << nameOf(state.kind);
                ++withLoad;
            }
        }
    }
    EXPECT_GT(withLoad, 3) << ids.size() << " can be taken";
    EXPECT_FALSE(page.takeFromHull("F99.P.arm.1"));
    EXPECT_EQ(desk.journal().tip(), step);
}

TEST_F(Bench, theRecordIsWrittenCopiedAndPrinted) {
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("r.pdf"));
    const QString txt = folder.filePath(QStringLiteral("r.txt"));
    ASSERT_TRUE(page.saveRecord(pdf, PaperSize::a4));
    ASSERT_TRUE(page.saveRecord(txt, PaperSize::a4));
    QFile file(txt);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString text = QString::fromUtf8(file.readAll());
    EXPECT_TRUE(text.contains(QStringLiteral("Sideways load on the fastening, US basis")));
    EXPECT_GT(QFile(pdf).size(), 10000);
    page.run(PageCommand::copy);
    EXPECT_TRUE(QApplication::clipboard()->text().contains(QStringLiteral("can carry")));
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(folder.filePath(QStringLiteral("p.pdf")));
    EXPECT_TRUE(page.print(printer, PaperSize::letter));
    QSignalSpy stopped(&page, &Page::stopped);
    EXPECT_FALSE(page.saveRecord(folder.filePath(QStringLiteral("no/where/r.pdf")), PaperSize::a4));
    EXPECT_EQ(stopped.size(), 1);
}

TEST_F(Bench, everythingIsReachedByTabAndHasAName) {
    std::set<QWidget*> seen;
    QWidget* at = page.row("fastener.kind")->entry();
    at->setFocus();
    for (int i = 0; i < 200; ++i) {
        QWidget* here = QApplication::focusWidget();
        ASSERT_NE(here, nullptr);
        if (!seen.insert(here).second) break;
        const auto* button = qobject_cast<QAbstractButton*>(here);
        EXPECT_TRUE(!here->accessibleName().isEmpty() ||
                    (button != nullptr && !button->text().isEmpty()) ||
                    qobject_cast<QLabel*>(here) != nullptr ||
                    !here->parentWidget()->accessibleName().isEmpty())
            << here->metaObject()->className();
        QTest::keyClick(here, Qt::Key_Tab);
    }
    EXPECT_TRUE(seen.count(&page.table())) << "the table";
    EXPECT_TRUE(seen.count(&page.text())) << "the working";
    EXPECT_TRUE(seen.count(page.row("load.lateral")->entry()));
}

}  // namespace
}  // namespace fayline
