// The calculation record as pages and as text, from what it says to where each word stands.
#include "sheet/record.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <regex>

#include "found.h"
#include "sheet/font_metrics.h"

namespace fayline {
namespace {

Record longRecord() {
    Record made;
    made.id = "hull";
    made.title = "Calculation record: whole hull";
    made.fileName = "record-hull.pdf";
    made.subject = "Wren, step 12";
    made.caution =
        "Results guide, they do not certify: a naval architect decides. " + std::string(150, 'x');
    made.printed = "2026-11-25 10:42 UTC";
    made.program = "fayline 0.1.0";
    made.contents = true;
    made.opening.emplace_back(record::Paragraph{"Caution", "To be confirmed.", false});
    for (int part = 1; part <= 9; ++part) {
        made.blocks.emplace_back(record::Heading{1, "Part " + std::to_string(part)});
        for (int joint = 1; joint <= 4; ++joint) {
            const std::string name = std::to_string(part) + "." + std::to_string(joint);
            made.blocks.emplace_back(record::Heading{2, "Joint " + name});
            record::Table table;
            table.heads = {"limit state", "must carry", "says"};
            for (int row = 0; row < 7 * part; ++row)
                table.rows.push_back({"lateral " + std::to_string(row), "1234 lb",
                                      "a long remark that has to be broken into several lines "
                                      "because no column of any table is as wide as all of it"});
            table.heavy = {false, true};
            made.blocks.emplace_back(std::move(table));
            record::Working working;
            working.title = "Sideways load " + name;
            working.formula = "Z' = min(modes) · C_D · C_M";
            working.clause = "NDS 12.3.1";
            working.standing = "from memory";
            working.result = "can carry 88.2 lb (392.3 N)";
            working.figures = {{"t", "0.75 in", "19.05 mm", "thickness", "decision", ""},
                               {"C_D", "1.6", "", "duration", "NDS 2.3.2", "from memory"}};
            working.outside = {"beyond the table"};
            made.blocks.emplace_back(std::move(working));
        }
    }
    return made;
}

std::string allText(const SheetPage& page) {
    std::string all;
    for (const shape::Text& text : texts(page.drawing)) all += text.text + "\n";
    return all;
}

class RecordPages : public testing::TestWithParam<PaperSize> {};

TEST_P(RecordPages, EachBearsTitleCodeCautionAndItsNumber) {
    const Record record = longRecord();
    const Sheet sheet = layOut(record, GetParam());
    ASSERT_GT(sheet.pages.size(), 10U);
    for (std::size_t i = 0; i < sheet.pages.size(); ++i) {
        const std::string all = allText(sheet.pages[i]);
        EXPECT_EQ(sheet.pages[i].number, static_cast<int>(i) + 1);
        EXPECT_EQ(sheet.pages[i].drawing.size, sizeOf(GetParam()));
        for (const std::string& words :
             {record.title, record.subject, sheet.revision, std::string("a naval architect"),
              "page " + std::to_string(i + 1) + " of " + std::to_string(sheet.pages.size())})
            EXPECT_NE(all.find(words), std::string::npos) << words << " on page " << i + 1;
    }
}

TEST_P(RecordPages, NothingStandsOutsideTheTextNorOnTopOfTheFoot) {
    const Sheet sheet = layOut(longRecord(), GetParam());
    for (const SheetPage& page : sheet.pages) {
        const auto all = texts(page.drawing);
        const shape::Text* caution = nullptr;
        for (const shape::Text& text : all) {
            const RectMm at = textBounds(text);
            EXPECT_GE(at.left, 21.9) << text.text;
            EXPECT_LE(at.right, 22.0 + recordWidth_mm + 0.1) << text.text;
            EXPECT_LE(at.bottom, page.drawing.size.height - 7.0) << text.text;
            if (text.text.rfind("Results guide", 0) == 0) caution = &text;
        }
        ASSERT_NE(caution, nullptr);
        const double foot = textBounds(*caution).top;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const RectMm a = textBounds(all[i]);
            const bool inFoot = all[i].anchor.y >= caution->anchor.y;
            if (!inFoot) {
                EXPECT_LT(all[i].anchor.y, foot) << all[i].text;
            }
            for (std::size_t k = i + 1; k < all.size(); ++k) {
                RectMm b = textBounds(all[k]);
                b.left += 0.05;
                b.right -= 0.05;
                const bool meets =
                    a.overlaps(b) && a.top < b.bottom - 0.3 && b.top < a.bottom - 0.3;
                EXPECT_FALSE(meets) << all[i].text << " | " << all[k].text;
            }
        }
    }
}

TEST_P(RecordPages, ContentsNameThePageEachHeadingStandsOn) {
    const Sheet sheet = layOut(longRecord(), GetParam());
    int found = 0;
    for (const SheetPage& page : sheet.pages) {
        const auto all = texts(page.drawing);
        for (const shape::Text& number : all) {
            if (number.across != shape::Across::right ||
                !std::regex_match(number.text, std::regex("[0-9]+")))
                continue;
            const auto name = std::find_if(all.begin(), all.end(), [&](const shape::Text& text) {
                return text.across == shape::Across::left && text.anchor.y == number.anchor.y;
            });
            ASSERT_NE(name, all.end());
            const auto target = static_cast<std::size_t>(std::stoi(number.text));
            ASSERT_LE(target, sheet.pages.size());
            const auto there = texts(sheet.pages[target - 1].drawing);
            EXPECT_TRUE(std::any_of(there.begin(), there.end(),
                                    [&](const shape::Text& text) {
                                        return text.text == name->text && text.letterMm > 2.5;
                                    }))
                << name->text << " is not on page " << target;
            ++found;
        }
    }
    EXPECT_EQ(found, 9 + 9 * 4);
}

TEST_P(RecordPages, ATablesHeadsStandAgainOnItsNextPage) {
    Record record = longRecord();
    record.contents = false;
    record.blocks.clear();
    record::Table table;
    table.heads = {"bolt", "pull"};
    for (int row = 0; row < 150; ++row) table.rows.push_back({"K." + std::to_string(row), "9 lb"});
    record.blocks.emplace_back(std::move(table));
    const Sheet sheet = layOut(record, GetParam());
    ASSERT_GE(sheet.pages.size(), 3U);
    std::size_t rows = 0;
    for (const SheetPage& page : sheet.pages) {
        const auto all = texts(page.drawing);
        EXPECT_NE(textSaying(all, "bolt"), nullptr);
        rows += static_cast<std::size_t>(std::count_if(
            all.begin(), all.end(), [](const shape::Text& t) { return t.text == "9 lb"; }));
    }
    EXPECT_EQ(rows, 150U);
}

INSTANTIATE_TEST_SUITE_P(Papers, RecordPages, testing::Values(PaperSize::a4, PaperSize::letter),
                         [](const auto& one) { return std::string(nameOf(one.param)); });

TEST(Record, ItsCodeFollowsWhatItSaysAndNothingElse) {
    const Record record = longRecord();
    Record other = record;
    other.printed = "2027-01-01 00:00 UTC";
    other.program = "fayline 9";
    EXPECT_EQ(revisionOf(other), revisionOf(record));
    std::get<record::Working>(other.blocks[3]).figures[0].value = "0.76 in";
    EXPECT_NE(revisionOf(other), revisionOf(record));
    other = record;
    std::get<record::Table>(other.blocks[2]).rows[1][1] = "1235 lb";
    EXPECT_NE(revisionOf(other), revisionOf(record));
    other = record;
    other.subject = "Wren, step 13";
    EXPECT_NE(revisionOf(other), revisionOf(record));
}

TEST(Record, AsTextItSaysTheSame) {
    const Record record = longRecord();
    const std::string text = textOf(record);
    for (const std::string& words :
         {record.title, "revision " + revisionOf(record), std::string("Joint 9.4"),
          std::string("t = 0.75 in (19.05 mm) thickness; decision"),
          std::string("C_D = 1.6 duration; NDS 2.3.2 [from memory]"),
          std::string("Result: can carry 88.2 lb (392.3 N)"),
          std::string("Outside the range: beyond the table"), std::string("NDS 12.3.1")}) {
        // Broken into lines like all long texts.
        std::string pattern;
        for (const char c : words) {
            if (c == ' ') {
                pattern += "\\s+";
            } else {
                if (std::string("()[].'*+?^$\\").find(c) != std::string::npos) pattern += '\\';
                pattern += c;
            }
        }
        EXPECT_TRUE(std::regex_search(text, std::regex(pattern))) << words;
    }
    std::size_t longest = 0, letters = 0;
    for (const char c : text) {
        letters = c == '\n' ? 0 : letters + ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U);
        longest = std::max(longest, letters);
    }
    EXPECT_LE(longest, 160U) << "one word of the caution is that long";
}

}  // namespace
}  // namespace fayline
