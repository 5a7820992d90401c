#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QElapsedTimer>
#include <QLabel>
#include <QMimeData>
#include <QSignalSpy>
#include <QTest>
#include <map>
#include <set>

#include "chart/chart.h"
#include "chart_data.h"
#include "desk/desk.h"
#include "filter_bar.h"
#include "margins/margins_page.h"
#include "margins_view.h"
#include "printing.h"
#include "services.h"
#include "sketch/sketch_view.h"
#include "words/checks.h"
#include "working/working_panel.h"

namespace fayline {
namespace {

class Margins : public testing::Test {
  protected:
    Margins() : desk(test::deskSetup()), page(desk) {
        EXPECT_TRUE(desk.open(file.path()));
        page.resize(1280, 800);
        page.show();
        page.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
    }
    MarginFilter with(const std::function<void(MarginFilter&)>& change) {
        MarginFilter filter;
        change(filter);
        return filter;
    }

    test::DemoFile file;
    Desk desk;
    MarginsPage page;
};

/// With every group of fastenings decided.
class WholeHull : public Margins {
  protected:
    WholeHull() {
        desk.close();
        test::decideFastenings(file.path());
        EXPECT_TRUE(desk.open(file.path()));
    }
};

/// Every line under one, itself left out.
void gather(const MarginsModel& model, const QModelIndex& above, std::vector<QModelIndex>& lines) {
    for (int row = 0; row < model.rowCount(above); ++row) {
        const QModelIndex line = model.index(row, 0, above);
        lines.push_back(line);
        gather(model, line, lines);
    }
}
std::vector<QModelIndex> linesOf(const MarginsModel& model) {
    std::vector<QModelIndex> lines;
    gather(model, {}, lines);
    return lines;
}

TEST_F(WholeHull, foldsToALineForEachJointWorstFirst) {
    MarginsModel& model = page.model();
    std::map<std::string, const Check*> governing;
    for (const Check* check : desk.results()->worstFirst)
        governing.try_emplace(jointOf(*check), check);
    ASSERT_EQ(model.rowCount(), static_cast<int>(governing.size()));
    ASSERT_LT(governing.size() * 20, desk.results()->worstFirst.size()) << "that is what folds";
    for (int row = 0; row < model.rowCount(); ++row) {
        const QModelIndex line = model.index(row, 0);
        const Check& check = model.check(line);
        EXPECT_EQ(&check, governing.at(jointOf(check)));
        if (row > 0) {
            EXPECT_FALSE(worseThan(check, model.check(model.index(row - 1, 0))));
        }
    }
    const QModelIndex first = model.index(0, 0);
    EXPECT_EQ(first.data().toString(), jointTitle(*desk.results()->worstFirst.front()));
    EXPECT_EQ(first.siblingAtColumn(MarginsModel::status).data().toString(),
              QStringLiteral("short"));
}

TEST_F(WholeHull, unfoldsToThingsAndToEveryCheck) {
    const MarginsModel& model = page.model();
    std::multiset<const Check*> leaves;
    for (const QModelIndex& line : linesOf(model)) {
        const CheckList& checks = model.checks(line);
        EXPECT_EQ(model.hasChildren(line), checks.size() > 1);
        EXPECT_EQ(checks.front(), *std::min_element(checks.begin(), checks.end(),
                                                    [](const Check* a, const Check* b) {
                                                        return worseThan(*a, *b);
                                                    }));
        if (checks.size() == 1 && model.rowCount(line) == 0) leaves.insert(checks.front());
    }
    EXPECT_EQ(leaves, std::multiset<const Check*>(desk.results()->worstFirst.begin(),
                                                  desk.results()->worstFirst.end()));
}

TEST_F(Margins, keepsTheRulesOfModels) {
    QAbstractItemModelTester tester(&page.model(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_TRUE(desk.decide({{"K.4.washer_diameter", "4 in"}}));
    page.filter().setFilter(with([](MarginFilter& f) { f.text = QStringLiteral("K.4"); }));
    ASSERT_TRUE(desk.undo());
    desk.close();
    EXPECT_EQ(page.model().rowCount(), 0);
}

TEST_F(Margins, filtersByGroupCaseStatusBasisAndText) {
    MarginsModel& model = page.model();
    const auto all = [&](const MarginFilter& filter, auto holds) {
        page.filter().setFilter(filter);
        int expected = 0;
        for (const Check* check : desk.results()->worstFirst) expected += holds(*check) ? 1 : 0;
        EXPECT_GT(expected, 0);
        EXPECT_EQ(model.listed(), expected);
        for (int row = 0; row < model.rowCount(); ++row) {
            for (const Check* check : model.checks(model.index(row, 0))) EXPECT_TRUE(holds(*check));
        }
    };
    all(with([](MarginFilter& f) { f.group = "ballast"; }),
        [](const Check& c) { return c.group == "ballast"; });
    all(with([](MarginFilter& f) { f.loadCase = LoadCase::groundingUp; }),
        [](const Check& c) { return c.loadCase == LoadCase::groundingUp; });
    all(with([](MarginFilter& f) { f.status = Status::near; }),
        [](const Check& c) { return c.status == Status::near; });
    all(with([](MarginFilter& f) { f.basis = Basis::ec5; }),
        [](const Check& c) { return c.basis != Basis::us; });
    all(with([](MarginFilter& f) { f.text = QStringLiteral("f18"); }),
        [](const Check& c) { return c.frame == "F18"; });
    all(with([](MarginFilter& f) { f.text = QStringLiteral("WASHER"); }),
        [](const Check& c) { return c.limitState == LimitStateKind::washer; });
}

TEST_F(Margins, whatIsFilteredAwaySaysSoAndComesBack) {
    page.filter().setFilter(with([](MarginFilter& f) { f.text = QStringLiteral("treenail"); }));
    EXPECT_EQ(page.model().rowCount(), 0);
    EXPECT_FALSE(page.table().isVisible());
    EXPECT_FALSE(page.working().isVisible()) << "no working without a check";
    bool said = false;
    for (auto* label : page.findChildren<QLabel*>()) {
        if (!label->isVisible() || !label->text().contains(QStringLiteral("No check is like that")))
            continue;
        said = true;
        emit label->linkActivated(QStringLiteral("all"));
        break;
    }
    EXPECT_TRUE(said);
    EXPECT_TRUE(page.table().isVisible());
    EXPECT_TRUE(page.working().isVisible());
}

TEST_F(Margins, theChosenRowLeadsSketchChartAndWorking) {
    const QModelIndex line = page.model().firstOf("K.9");
    ASSERT_TRUE(line.isValid());
    page.table().setCurrentIndex(line);
    EXPECT_EQ(page.profile().selectedId(), QStringLiteral("K.9"));
    EXPECT_EQ(page.chart().data().places[page.chart().place()], QStringLiteral("F24"));
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return page.working().plainText().startsWith(QStringLiteral("Ballast bolt K.9")); }));
    EXPECT_TRUE(page.working().plainText().contains(QStringLiteral("US:")));
    emit page.profile().selected(QStringLiteral("F20"));
    EXPECT_EQ(page.model().check(page.table().currentIndex()).frame, "F20");
    QSignalSpy wanted(&page, &MarginsPage::frameWanted);
    QTest::keyClick(&page.table(), Qt::Key_Return);
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted.front().front().toString(), QStringLiteral("F20"));
}

TEST_F(Margins, whatIsUnfoldedAndChosenStaysSoThroughAnEdit) {
    const QModelIndex joint = page.model().firstOf("K.9");
    page.table().expand(joint);
    QModelIndex line = page.model().index(0, 0, joint);
    while (page.model().check(line).limitState != LimitStateKind::metal)
        line = line.siblingAtRow(line.row() + 1);
    page.table().setCurrentIndex(line);
    const Check before = page.model().check(line);
    ASSERT_TRUE(desk.decide({{"K.9.diameter", "1/2 in"}}));
    const QModelIndex now = page.table().currentIndex();
    const Check& after = page.model().check(now);
    EXPECT_EQ(after.id, before.id);
    EXPECT_EQ(after.limitState, before.limitState);
    EXPECT_EQ(after.loadCase, before.loadCase);
    EXPECT_EQ(after.basis, before.basis);
    EXPECT_LT(*after.margin, *before.margin) << "a thinner bolt";
    EXPECT_TRUE(page.table().isExpanded(now.parent()));
    EXPECT_EQ(now.parent().data().toString(), QStringLiteral("Ballast bolt K.9"));
}

TEST_F(WholeHull, anEditTellsOfTheLinesItChangedAndOfNoOthers) {
    ASSERT_TRUE(desk.decide({{"F20.heel.count", "3"}}));
    QSignalSpy resets(&page.model(), &QAbstractItemModel::modelReset);
    std::set<std::string> told;
    QObject::connect(
        &page.model(), &QAbstractItemModel::dataChanged, &page,
        [&](const QModelIndex& line) { told.insert(jointOf(page.model().check(line))); });
    ASSERT_TRUE(desk.decide({{"F20.heel.count", "2"}}));
    EXPECT_EQ(told, std::set<std::string>{"F20 heel"});
    EXPECT_EQ(resets.size(), 0);
    EXPECT_EQ(page.model().looked(), 1) << "the set of F20 alone is looked through";
}

/// After any run of edits the lines are those of a model that never saw another state.
TEST_F(WholeHull, followsEditsToTheSameLinesAsAFreshModel) {
    for (const char* thing : {"K.9", "F20", "F21", "F37"})
        page.table().expandRecursively(page.model().firstOf(thing));
    const std::vector<Typed> edits = {
        {{"K.9.diameter", "1/2 in"}}, {{"F20.heel.count", "4"}}, {{"plank.gauge", "No. 10"}},
        {{"F21.floor.kind", "none"}}, {{"hull.basis", "ec5"}},   {{"F21.floor.kind", ""}},
        {{"bolts.count", "7"}},       {{"plank.count", "0"}},    {{"bolts.count", "9"}}};
    const auto words = [](const MarginsModel& model) {
        QStringList all;
        for (const QModelIndex& line : linesOf(model)) {
            QStringList cells;
            for (int column = 0; column < model.columnCount(); ++column)
                cells.append(line.siblingAtColumn(column).data().toString());
            all.append(cells.join(QLatin1Char('|')));
        }
        return all;
    };
    for (const Typed& edit : edits) {
        const auto done = desk.decide(edit);
        ASSERT_TRUE(done) << done.error().line();
        MarginsModel fresh;
        fresh.show(desk.results(), speechOf(desk.project()));
        EXPECT_EQ(words(page.model()), words(fresh)) << edit.front().first;
    }
}

TEST_F(Margins, copiedRowsAreTabbedTextAndCsv) {
    page.table().setCurrentIndex(page.model().index(0, 0));
    const QStringList cells{page.model().index(0, MarginsModel::thing).data().toString(),
                            page.model().index(0, MarginsModel::status).data().toString(),
                            page.model().index(0, MarginsModel::margin).data().toString()};
    page.run(PageCommand::copyWithHeadings);
    const QMimeData* data = QGuiApplication::clipboard()->mimeData();
    const QStringList lines = data->text().split(QLatin1Char('\n'));
    ASSERT_EQ(lines.size(), 3);
    EXPECT_TRUE(lines[0].startsWith(QStringLiteral("Joint\tStatus\tMargin")));
    EXPECT_TRUE(lines[1].startsWith(cells.join(QLatin1Char('\t'))));
    EXPECT_TRUE(data->data(QStringLiteral("text/csv")).startsWith("Joint,Status,Margin"));
    page.run(PageCommand::copy);
    EXPECT_EQ(QGuiApplication::clipboard()->text().count(QLatin1Char('\n')), 1);
}

TEST_F(Margins, withoutAHullItSaysWhatIsMissingAndLeadsThere) {
    ASSERT_TRUE(desk.create(file.folder() + QStringLiteral("/new.fayline"), {}));
    EXPECT_EQ(page.model().rowCount(), 0);
    QSignalSpy wanted(&page, &MarginsPage::hullWanted);
    for (auto* label : page.findChildren<QLabel*>()) {
        if (label->isVisible() && label->text().contains(QStringLiteral("Still missing")))
            emit label->linkActivated(asText(desk.results()->missing.front().what));
    }
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_FALSE(page.chart().data().emptyText.isEmpty());
}

TEST_F(Margins, nothingIsListedWhileAnotherPageIsInFront) {
    page.hide();
    const auto before = page.model().results();
    ASSERT_TRUE(desk.decide({{"K.4.washer_diameter", "4 in"}}));
    EXPECT_EQ(page.model().results(), before);
    page.show();
    EXPECT_EQ(page.model().results(), desk.results());
}

TEST_F(Margins, chartsAgreeWithTheResults) {
    const Results& results = *desk.results();
    const ChartData worst = worstByFrame(results, std::nullopt, {});
    ASSERT_EQ(worst.series.size(), 2U);
    const auto place = static_cast<std::size_t>(worst.places.indexOf(QStringLiteral("F18")));
    EXPECT_DOUBLE_EQ(*worst.series[0].values[place],
                     *worstAtFrame(results, "F18", Basis::us)->margin);
    EXPECT_DOUBLE_EQ(*worst.series[1].values[place],
                     *worstAtFrame(results, "F18", Basis::ec5)->margin);
    EXPECT_FALSE(worst.series[0].values[0]) << "nothing is checked at F1: a gap, not nil";

    const ChartData moments =
        momentByFrame(results, LoadCase::knockdownStarboard, UnitSystem::millimetres);
    double sum = 0;
    for (const auto& value : moments.series.front().values) sum += value.value_or(0.0);
    for (const auto& loads : results.cases) {
        if (loads->loadCase != LoadCase::knockdownStarboard) continue;
        EXPECT_NEAR(sum, inNewtonMetres(loads->totalMoment.x) / 1000.0, 1e-6 * std::abs(sum));
    }
    const ChartData shares = shareByFrame(results, std::nullopt);
    for (const ChartSeries& series : shares.series) {
        double all = 0;
        for (const auto& value : series.values) all += value.value_or(0.0);
        EXPECT_NEAR(all, 100.0, 1e-6) << series.name.toStdString();
    }
}

TEST_F(Margins, aHundredThousandChecksStayQuick) {
    auto many = std::make_shared<Results>(*desk.results());
    std::vector<std::vector<Check>> byFrame(60);
    for (std::size_t i = 0; i < 100000; ++i) {
        Check check = *desk.results()->worstFirst[i % desk.results()->worstFirst.size()];
        check.frame = "F" + std::to_string(i % 60 + 1);
        check.id = check.frame + ".P.plank." + std::to_string(i % 14 + 1) + ".1";
        check.group = "plank";
        byFrame[i % 60].push_back(check);
    }
    many->checkSets.clear();
    many->worstFirst.clear();
    for (std::vector<Check>& checks : byFrame) {
        many->checkSets.push_back(std::make_shared<const CheckSet>(std::move(checks)));
        for (const Check& check : many->checkSets.back()->checks)
            many->worstFirst.push_back(&check);
    }
    QElapsedTimer clock;
    clock.start();
    page.model().show(many, speechOf(desk.project()));
    page.table().grab();
    const auto shown_ms = clock.restart();
    page.model().setFilter(with([](MarginFilter& f) { f.text = QStringLiteral("strake 7"); }));
    const auto filtered_ms = clock.elapsed();
    EXPECT_EQ(page.model().rowCount(), 30) << "strake 7 comes at even numbers only";
    EXPECT_GT(page.model().listed(), 5000);
    RecordProperty("shown_ms", static_cast<int>(shown_ms));
    RecordProperty("filtered_ms", static_cast<int>(filtered_ms));
    EXPECT_LT(shown_ms, 1500) << "rows are made as they are shown";
    EXPECT_LT(filtered_ms, 4000);
    page.model().show(desk.results(), speechOf(desk.project()));
}

}  // namespace
}  // namespace fayline
