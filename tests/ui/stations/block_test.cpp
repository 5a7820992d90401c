#include "block.h"

#include <QSignalSpy>
#include <random>

#include "clipboard.h"
#include "grid_fixture.h"

namespace fayline {
namespace {

TEST(Block, readsWhatSpreadsheetsPutOnTheClipboard) {
    const Block plain = {{QStringLiteral("a"), QStringLiteral("b")},
                         {QStringLiteral("c"), QStringLiteral("d")}};
    for (const char* text : {"a\tb\nc\td", "a\tb\nc\td\n", "a\tb\r\nc\td\r\n", "a\tb\rc\td\r"})
        EXPECT_EQ(readBlock(QString::fromLatin1(text)), plain) << text;
    EXPECT_EQ(readBlock(QStringLiteral("\"two\nlines\"\t\"a \"\"b\"\" c\"")),
              (Block{{QStringLiteral("two\nlines"), QStringLiteral("a \"b\" c")}}));
    EXPECT_EQ(readBlock(QStringLiteral("1 1/2\"\t3\"")),
              (Block{{QStringLiteral("1 1/2\""), QStringLiteral("3\"")}}))
        << "inch marks are no quotes";
    EXPECT_EQ(readBlock(QStringLiteral("\"open\tb")),
              (Block{{QStringLiteral("\"open"), QStringLiteral("b")}}));
    EXPECT_EQ(readBlock(QStringLiteral("a\t\tb")),
              (Block{{QStringLiteral("a"), QString(), QStringLiteral("b")}}));
    EXPECT_TRUE(readBlock({}).empty());
}

TEST(Block, comesBackFromWhatItWrites) {
    std::mt19937 random(20261125);
    const QString letters = QStringLiteral("a\"\t\n\r' 1/2");
    for (int trial = 0; trial < 500; ++trial) {
        Block block;
        const auto rows = 1 + random() % 4;
        const auto columns = 1 + random() % 4;
        for (std::size_t r = 0; r < rows; ++r) {
            QStringList row;
            for (std::size_t c = 0; c < columns; ++c) {
                QString cell;
                for (auto n = random() % 5; n > 0; --n)
                    cell += letters[static_cast<qsizetype>(random() %
                                                           static_cast<unsigned>(letters.size()))];
                row.append(cell);
            }
            block.push_back(row);
        }
        EXPECT_EQ(readBlock(writeBlock(block)), block);
    }
}

using Grid = test::GridTest;

TEST_F(Grid, aPastedBlockIsOneStep) {
    go("F14", Column::sided);
    const auto tip = desk.journal().tip();
    paste(QStringLiteral("2 1/2\t8\r\n2,5 in\t200 mm\r\n"));
    EXPECT_EQ(desk.journal().tip(), tip + 1);
    EXPECT_EQ(test::decided(desk, "F14.floor.sided"), QStringLiteral("2 1/2 in"));
    EXPECT_EQ(test::decided(desk, "F15.floor.throat"), QStringLiteral("200 mm"));
    EXPECT_EQ(shown("F15", Column::sided), QStringLiteral("2-1/2")) << "a comma marks decimals";
    ASSERT_TRUE(desk.undo());
    EXPECT_TRUE(test::decided(desk, "F14.floor.sided").isEmpty());
    EXPECT_TRUE(test::decided(desk, "F15.floor.throat").isEmpty());
}

TEST_F(Grid, aPasteWithABadCellChangesNothingAndNamesIt) {
    QSignalSpy stopped(&view, &StationsView::stopped);
    go("F14", Column::sided);
    const auto tip = desk.journal().tip();
    paste(QStringLiteral("3\t8\nwide\t8\n3\t1.2.3\n"));
    EXPECT_EQ(desk.journal().tip(), tip);
    ASSERT_EQ(stopped.size(), 1);
    const QStringList details = stopped.front()[1].toStringList();
    ASSERT_EQ(details.size(), 2);
    EXPECT_TRUE(details[0].startsWith(QStringLiteral("F15 Floor siding, “wide”: ")))
        << details[0].toStdString();
    EXPECT_TRUE(details[1].startsWith(QStringLiteral("F16 Floor throat, “1.2.3”: ")))
        << details[1].toStdString();
}

TEST_F(Grid, oneCellFillsTheSelectionAndABlockTilesIt) {
    select(at("F14", Column::throat), at("F17", Column::throat));
    paste(QStringLiteral("8"));
    EXPECT_EQ(test::decided(desk, "F17.floor.throat"), QStringLiteral("8 in"));
    select(at("F14", Column::throat), at("F17", Column::throat));
    paste(QStringLiteral("6\n9\n"));
    EXPECT_EQ(test::decided(desk, "F14.floor.throat"), QStringLiteral("6 in"));
    EXPECT_EQ(test::decided(desk, "F15.floor.throat"), QStringLiteral("9 in"));
    EXPECT_EQ(test::decided(desk, "F16.floor.throat"), QStringLiteral("6 in"));
}

TEST_F(Grid, aBlockThatDoesNotFitIsRefused) {
    QSignalSpy stopped(&view, &StationsView::stopped);
    const auto tip = desk.journal().tip();
    go("F36", Column::throat);
    paste(QStringLiteral("8\n8\n8\n"));
    go("F14", Column::worst);
    paste(QStringLiteral("8\t8\n"));
    EXPECT_EQ(stopped.size(), 2);
    EXPECT_EQ(desk.journal().tip(), tip);
}

TEST_F(Grid, whatIsCopiedComesBackUnchanged) {
    select(at("F14", Column::place), at("F24", Column::worst));
    view.copy();
    const QString copied = QGuiApplication::clipboard()->text();
    EXPECT_EQ(readBlock(copied).size(), 11U);
    const Project before = desk.project();
    const auto results = desk.results();
    view.paste();
    // The rule's values are now decided by name, but they are the same values.
    ASSERT_EQ(desk.results()->worstFirst.size(), results->worstFirst.size());
    for (std::size_t i = 0; i < results->worstFirst.size(); ++i) {
        ASSERT_EQ(desk.results()->worstFirst[i]->margin.has_value(),
                  results->worstFirst[i]->margin.has_value());
        if (results->worstFirst[i]->margin) {
            EXPECT_NEAR(*desk.results()->worstFirst[i]->margin, *results->worstFirst[i]->margin,
                        1e-9)
                << results->worstFirst[i]->id;
        }
    }
}

TEST_F(Grid, copiesCarryUnitsAndNumbersForSpreadsheets) {
    const QItemSelection cells(at("F20", Column::diameter), at("F20", Column::diameter));
    const auto plain = copyCells(model, cells, view.shownColumns(), false);
    EXPECT_EQ(plain->text(), QStringLiteral("5/8 in\n"));
    EXPECT_TRUE(plain->html().contains(QStringLiteral("sdval=\"0.625\"")));
    const auto headed = copyCells(model, cells, view.shownColumns(), true);
    EXPECT_EQ(headed->text(), QStringLiteral("Frame\tBolt ⌀, in\nF20\t5/8 in\n"));
}

TEST_F(Grid, ctrlDFillsFromTheTopOrFromAbove) {
    select(at("F20", Column::diameter), at("F24", Column::diameter));
    QSignalSpy said(&view, &StationsView::said);
    const auto tip = desk.journal().tip();
    view.fillDown();
    EXPECT_EQ(desk.journal().tip(), tip + 1);
    EXPECT_EQ(test::decided(desk, "K.9.diameter"), QStringLiteral("5/8 in"));
    EXPECT_TRUE(said.back().front().toString().startsWith(QStringLiteral("1 cell")))
        << said.back().front().toString().toStdString();

    go("F15", Column::throat);
    ASSERT_TRUE(desk.decide({{"F14.floor.throat", "8 in"}}));
    view.fillDown();
    EXPECT_EQ(test::decided(desk, "F15.floor.throat"), QStringLiteral("8 in"));
    go("F1", Column::throat);
    view.fillDown();
    EXPECT_TRUE(
        said.back().front().toString().startsWith(QStringLiteral("There is no frame above")));
}

TEST_F(Grid, fillingFromARuleGoesBackToTheRule) {
    ASSERT_TRUE(desk.decide({{"F15.floor.throat", "8 in"}}));
    select(at("F14", Column::throat), at("F15", Column::throat));
    view.fillDown();
    EXPECT_TRUE(test::decided(desk, "F15.floor.throat").isEmpty());
}

}  // namespace
}  // namespace fayline
