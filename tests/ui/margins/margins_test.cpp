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

TEST_F(Margins, listsEveryCheckWorstFirst) {
    MarginsModel& model = page.model();
    ASSERT_EQ(model.rowCount(), static_cast<int>(desk.results()->worstFirst.size()));
    ASSERT_GT(model.rowCount(), 50);
    for (int row = 0; row < model.rowCount(); ++row)
        EXPECT_EQ(&model.check(row), desk.results()->worstFirst[static_cast<std::size_t>(row)]);
    EXPECT_EQ(model.index(0, MarginsModel::thing).data().toString(),
              QStringLiteral("Ballast bolt K.4"));
    EXPECT_EQ(model.index(0, MarginsModel::status).data().toString(), QStringLiteral("short"));
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
        EXPECT_EQ(model.rowCount(), expected);
        for (int row = 0; row < model.rowCount(); ++row) EXPECT_TRUE(holds(model.check(row)));
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
    const int row = page.model().firstOf("K.9");
    ASSERT_GE(row, 0);
    page.table().selectRow(row);
    page.table().setCurrentIndex(page.model().index(row, 0));
    EXPECT_EQ(page.profile().selectedId(), QStringLiteral("K.9"));
    EXPECT_EQ(page.chart().data().places[page.chart().place()], QStringLiteral("F24"));
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return page.working().plainText().startsWith(QStringLiteral("Ballast bolt K.9")); }));
    EXPECT_TRUE(page.working().plainText().contains(QStringLiteral("US:")));
    emit page.profile().selected(QStringLiteral("F20"));
    EXPECT_EQ(page.model().check(page.table().currentIndex().row()).frame, "F20");
    QSignalSpy wanted(&page, &MarginsPage::frameWanted);
    QTest::keyClick(&page.table(), Qt::Key_Return);
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted.front().front().toString(), QStringLiteral("F20"));
}

TEST_F(Margins, theSameQuestionStaysChosenThroughAnEdit) {
    page.filter().setFilter(with([](MarginFilter& f) { f.text = QStringLiteral("K.9"); }));
    int row = 0;
    while (page.model().check(row).limitState != LimitStateKind::metal) ++row;
    page.table().setCurrentIndex(page.model().index(row, 0));
    const Check before = page.model().check(row);
    ASSERT_TRUE(desk.decide({{"K.9.diameter", "1/2 in"}}));
    const Check& after = page.model().check(page.table().currentIndex().row());
    EXPECT_EQ(after.id, before.id);
    EXPECT_EQ(after.limitState, before.limitState);
    EXPECT_EQ(after.basis, before.basis);
    EXPECT_LT(*after.margin, *before.margin) << "a thinner bolt";
}

TEST_F(Margins, copiedRowsAreTabbedTextAndCsv) {
    page.table().selectRow(0);
    page.run(PageCommand::copyWithHeadings);
    const QMimeData* data = QGuiApplication::clipboard()->mimeData();
    const QStringList lines = data->text().split(QLatin1Char('\n'));
    ASSERT_EQ(lines.size(), 3);
    EXPECT_TRUE(lines[0].startsWith(QStringLiteral("Status\tMargin\tWhat")));
    EXPECT_TRUE(lines[1].startsWith(QStringLiteral("short\t×0.48\tBallast bolt K.4\twasher")));
    EXPECT_TRUE(data->data(QStringLiteral("text/csv")).startsWith("Status,Margin,What"));
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
    QSignalSpy resets(&page.model(), &QAbstractItemModel::modelReset);
    ASSERT_TRUE(desk.decide({{"K.4.washer_diameter", "4 in"}}));
    EXPECT_EQ(resets.size(), 0);
    page.show();
    EXPECT_EQ(resets.size(), 1);
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

TEST_F(Margins, aHundredThousandRowsStayQuick) {
    auto many = std::make_shared<Results>(*desk.results());
    auto checks = std::make_shared<std::vector<Check>>();
    for (int i = 0; i < 100000; ++i) {
        Check check =
            *desk.results()
                 ->worstFirst[static_cast<std::size_t>(i) % desk.results()->worstFirst.size()];
        check.id =
            "F" + std::to_string(i % 60 + 1) + ".P.plank." + std::to_string(i % 14 + 1) + ".1";
        check.group = "plank";
        checks->push_back(check);
    }
    many->checkSets = {checks};
    many->worstFirst.clear();
    for (const Check& check : *checks) many->worstFirst.push_back(&check);
    QElapsedTimer clock;
    clock.start();
    page.model().show(many, speechOf(desk.project()));
    page.table().grab();
    const auto shown_ms = clock.restart();
    page.model().setFilter(with([](MarginFilter& f) { f.text = QStringLiteral("strake 7"); }));
    const auto filtered_ms = clock.elapsed();
    EXPECT_GT(page.model().rowCount(), 5000);
    RecordProperty("shown_ms", static_cast<int>(shown_ms));
    RecordProperty("filtered_ms", static_cast<int>(filtered_ms));
    EXPECT_LT(shown_ms, 1500) << "rows are made as they are shown";
    EXPECT_LT(filtered_ms, 4000);
    page.model().show(desk.results(), speechOf(desk.project()));
}

}  // namespace
}  // namespace fayline
