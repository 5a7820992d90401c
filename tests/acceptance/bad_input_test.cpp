// Everything a person can type wrong: one clear sentence, nothing changed, no crash.

#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <regex>

#include "program.h"

using namespace fayline::acceptance;

namespace {

/// What the first line on standard error must name: where, what is wrong, what is allowed.
struct Says {
    std::string where, what, allowed;
};

/// Runs, and expects a refusal in the form `fayline: WHERE: WHAT; ALLOWED` that left the folder as
/// it was.
void refused(const Folder& folder, const Words& words, int exit, const Says& says) {
    const auto before = folder.digests();
    const Ran ran = runFayline(folder, words);
    EXPECT_EQ(ran.exit, exit) << ran.err;
    EXPECT_EQ(ran.out, "");
    EXPECT_EQ(folder.digests(), before) << "something was changed";
    const auto lines = linesOf(ran.err);
    ASSERT_FALSE(lines.empty()) << "not a word";
    static const std::regex form("fayline: [^ ].*: .+; .+");
    for (const std::string& line : lines) {
        EXPECT_TRUE(std::regex_match(line, form)) << line;
        EXPECT_LT(line.size(), 500U) << "no sentence is that long: " << line;
    }
    const std::string start = "fayline: " + says.where + ": ";
    EXPECT_EQ(lines[0].substr(0, start.size()), start);
    const auto semicolon = lines[0].find("; ");
    ASSERT_NE(semicolon, std::string::npos) << lines[0];
    EXPECT_NE(lines[0].find(says.what), std::string::npos) << lines[0];
    EXPECT_NE(lines[0].find(says.allowed, semicolon), std::string::npos) << lines[0];
}

const std::string head = "# unit: mm\nstation,x,half_breadth,height\n";
const std::vector<std::string> rows{"1,0,10,500",      "1,0,100,1000",  "2,1000,10,300",
                                    "2,1000,300,1000", "3,2000,10,500", "3,2000,100,1000"};

std::string table(const std::vector<std::string>& from = rows, const std::string& top = head) {
    std::string text = top;
    for (const std::string& row : from) text += row + "\n";
    return text;
}
/// The good table with one row (line 3 and on) put in another's place.
std::string with(std::size_t line, const std::string& row) {
    auto changed = rows;
    changed[line - 3] = row;
    return table(changed);
}

struct BadOffsets {
    std::string name, text;
    Says says;
    friend void PrintTo(const BadOffsets& bad, std::ostream* out) { *out << bad.name; }
};

std::vector<BadOffsets> badOffsets() {
    const std::string length = "a length such as 38 mm";
    std::string noUtf8 = with(6, "2,1000,300,1000");
    noUtf8.insert(noUtf8.find("2,1000,300") + 1, "\xff");
    std::string zero = with(6, "2,1000,300,1000");
    zero[zero.find("300,1000")] = '\0';
    return {
        {"empty", "", {"bad.csv:1", "no header line", "names of the columns"}},
        {"only_the_header", head, {"bad.csv:2", "0 stations", "at least 2"}},
        {"no_unit_line",
         table(rows, "station,x,half_breadth,height\n"),
         {"bad.csv:1", "names the unit is missing", "# unit: mm"}},
        {"unknown_unit",
         table(rows, "# unit: furlong\nstation,x,half_breadth,height\n"),
         {"bad.csv:1", "furlong", "mm, cm, m, in, ft or ft-in-8ths"}},
        {"unit_twice",
         table(rows, "# unit: mm\n# unit: in\nstation,x,half_breadth,height\n"),
         {"bad.csv:2", "a second time", "once"}},
        {"mistyped_column",
         table(rows, "# unit: mm\nstation,x,half_breadth,hieght\n"),
         {"bad.csv:2", "hieght", "did you mean height?"}},
        {"column_twice",
         table(rows, "# unit: mm\nstation,x,x,half_breadth,height\n"),
         {"bad.csv:2", "stands there twice", "once"}},
        {"semicolons",
         table({"1;0;10;500"}, "# unit: mm\nstation;x;half_breadth;height\n"),
         {"bad.csv:2", "not a column", "station, x, half_breadth, height and line"}},
        {"too_few_cells", with(6, "2,1000,300"), {"bad.csv:6", "3 cells", "one cell for each"}},
        {"decimal_comma",
         with(6, "2,1000,300,5,1000"),
         {"bad.csv:6", "5 cells", "one cell for each"}},
        {"open_quotation_mark",
         with(6, "2,1000,\"300,1000"),
         {"bad.csv:6", "never closed", "second quotation mark"}},
        {"no_number", with(6, "2,1000,dog,1000"), {"bad.csv:6", "\"dog\"", length}},
        {"nothing_where_a_number_stands",
         with(6, "2,1000,,1000"),
         {"bad.csv:6", "half_breadth: a length is missing", length}},
        {"not_a_number", with(6, "2,1000,nan,1000"), {"bad.csv:6", "\"nan\"", length}},
        {"infinity", with(6, "2,1000,inf,1000"), {"bad.csv:6", "\"inf\"", length}},
        {"huge_exponent", with(6, "2,1000,1e999,1000"), {"bad.csv:6", "too large", length}},
        {"thousands_of_digits",
         with(6, "2,1000," + std::string(5000, '9') + ",1000"),
         {"bad.csv:6", "half_breadth", length}},
        {"zero_below_the_stroke",
         with(6, "2,1000,1/0,1000"),
         {"bad.csv:6", "zero below the stroke", "from 1 up"}},
        {"a_mass_for_a_length",
         with(6, "2,1000,300 kg,1000"),
         {"bad.csv:6", "is a mass, a length is wanted", length}},
        {"digits_of_another_script",
         with(6, "2,1000,３００,1000"),
         {"bad.csv:6", "３００", length}},
        {"not_utf8", noUtf8, {"bad.csv:6", "not UTF-8", "save the file as UTF-8"}},
        {"a_zero_byte", zero, {"bad.csv:6", "NUL byte", "UTF-8 text"}},
        {"utf16", std::string("\xff\xfe#\0 \0u\0", 8), {"bad.csv:1", "UTF-16", "UTF-8"}},
        {"negative",
         with(6, "2,1000,-12,1000"),
         {"bad.csv:6", "half_breadth is -12 mm", "0 mm or more"}},
        {"absurd", with(6, "2,1000,300000,1000"), {"bad.csv:6", "300000 mm", "200 m"}},
        {"stations_out_of_order",
         table({rows[0], rows[1], rows[4], rows[5], "4,1000,10,300", "4,1000,300,1000"}),
         {"bad.csv:7", "does not lie aft of station 3", "from forward to aft"}},
        {"station_twice",
         table({rows[0], rows[1], rows[2], rows[3], "1,3000,10,500", "1,3000,100,1000"}),
         {"bad.csv:7", "station 1 comes twice", "each name once"}},
        {"two_places_of_one_station",
         with(6, "2,1001,300,1000"),
         {"bad.csv:6", "1001 mm", "one x for all points"}},
        {"one_station", table({rows[0], rows[1]}), {"bad.csv:2", "1 station", "at least 2"}},
        {"one_point",
         table({rows[0], rows[1], rows[2], rows[4], rows[5]}),
         {"bad.csv:5", "1 point", "at least 2"}},
        {"a_point_twice",
         with(4, "1,0,10,500"),
         {"bad.csv:4", "the same as the one in line 3", "once"}},
        {"upside_down",
         with(6, "2,1000,300,200"),
         {"bad.csv:6", "not above the first", "keel to sheer"}},
        {"crosses_itself",
         table({rows[0], rows[1], "2,1000,10,300", "2,1000,300,600", "2,1000,300,800",
                "2,1000,150,400", "2,1000,20,1000", rows[4], rows[5]}),
         {"bad.csv:8", "crosses itself: the piece between lines 7 and 8", "does not cross itself"}},
        {"waterline_above_the_sheer",
         table(rows, "# unit: mm\n# waterline: 5000\nstation,x,half_breadth,height\n"),
         {"bad.csv:2", "waterline is 5000 mm", "up to 1000 mm"}},
        {"too_large", std::string(9U << 20U, 'x'), {"bad.csv", "over 8 MB", "a table of offsets"}},
    };
}

class BadOffsetsTest : public ::testing::TestWithParam<BadOffsets> {};

struct BadDecision {
    std::string name, typed;
    int exit;
    Says says;
    friend void PrintTo(const BadDecision& bad, std::ostream* out) { *out << bad.name; }
};

std::vector<BadDecision> badDecisions() {
    const std::string length = "a length such as 38 mm";
    const auto own = [](const char* what, Says says) {
        says.where = what;
        return says;
    };
    return {
        {"no_value", "K.5.diameter", 2, {"K.5.diameter", "decides nothing", "WHAT=VALUE"}},
        {"no_name", "=5 mm", 2, {"=5 mm", "decides nothing", "WHAT=VALUE"}},
        {"mistyped",
         "K.5.diametr=1 in",
         1,
         {"K.5.diametr", "no decision of this name", "did you mean K.5.diameter?"}},
        {"mistyped_middle",
         "F9.flor.kind=sawn",
         1,
         {"F9.flor.kind", "no decision", "did you mean F9.floor.kind?"}},
        {"capitals",
         "K.5.Diameter=1 in",
         1,
         {"K.5.Diameter", "no decision", "did you mean K.5.diameter?"}},
        {"unheard_of", "engine.power=5", 1, {"engine.power", "no decision", "names like"}},
        {"control_characters", "K.5\n.x=5 mm", 1, {"K.5?.x", "no decision", ""}},
        {"no_such_frame", "F99.floor.kind=sawn", 1,
         own("F99.floor.kind", {"", "no frame F99", "F1 to F37"})},
        {"no_such_bolt", "K.77.diameter=1 in", 1,
         own("K.77.diameter", {"", "no ballast bolt K.77", "K.1 to K.9"})},
        {"range_past_the_end", "F3-F99.floor.kind=sawn", 1,
         own("F3-F99.floor.kind", {"", "no frame F99", "F1 to F37"})},
        {"range_backwards", "K.9-K.2.diameter=1 in", 1,
         own("K.9-K.2.diameter", {"", "K.9 comes after K.2", "K.2-K.9"})},
        {"bare_number", "bolts.diameter=22", 1, own("bolts.diameter", {"", "has no unit", length})},
        {"bare_fraction", "bolts.diameter=7/8", 1,
         own("bolts.diameter", {"", "has no unit", length})},
        {"mass_for_length", "bolts.diameter=5 kg", 1,
         own("bolts.diameter", {"", "is a mass, a length is wanted", length})},
        {"gauge_for_length", "bolts.diameter=No. 14", 1,
         own("bolts.diameter", {"", "is a gauge", length})},
        {"force_for_mass", "hull.displacement=7 kN", 1,
         own("hull.displacement", {"", "is a force, a mass is wanted", "kg"})},
        {"mass_for_density", "wood.my.density=600 kg", 1,
         own("wood.my.density", {"", "is a mass, a density is wanted", "kg/m3"})},
        {"length_for_ratio", "metal_set.factor=3 mm", 1,
         own("metal_set.factor", {"", "is a length", "a number such as"})},
        {"unknown_unit", "bolts.diameter=1 km", 1, own("bolts.diameter", {"", "km", length})},
        {"two_units", "bolts.diameter=22 mm mm", 1,
         own("bolts.diameter", {"", "left over", length})},
        {"four_groups", "keel.sided=1-2-3-4", 1,
         own("keel.sided", {"", "feet-inches-eighths", length})},
        {"negative", "keel.sided=-5 mm", 1,
         own("keel.sided", {"", "siding is -5 mm", "5 mm to 2 m"})},
        {"nothing_thick", "bolts.diameter=0 mm", 1,
         own("bolts.diameter", {"", "0 mm", "6 mm to 80 mm"})},
        {"absurd", "keel.sided=40 m", 1, own("keel.sided", {"", "40 m", "5 mm to 2 m"})},
        {"huge", "keel.sided=1e400 mm", 1, own("keel.sided", {"", "too large", length})},
        {"tiny", "keel.sided=1e-400 mm", 1, own("keel.sided", {"", "too small", length})},
        {"not_a_number", "keel.sided=nan mm", 1, own("keel.sided", {"", "nan mm", length})},
        {"infinity", "case.knockdown_port.factor=inf", 1,
         own("case.knockdown_port.factor", {"", "inf", "a number such as"})},
        {"hexadecimal", "metal.my.yield=0x10 MPa", 1,
         own("metal.my.yield", {"", "0x10 MPa", "a stress such as"})},
        {"decimal_comma_thousands", "keel.sided=1,234.5 mm", 1,
         own("keel.sided", {"", "1,234.5 mm", ""})},
        {"zero_below_the_stroke", "keel.sided=1/0 in", 1,
         own("keel.sided", {"", "zero below the stroke", "from 1 up"})},
        {"digits_of_another_script", "keel.sided=١٠ mm", 1,
         own("keel.sided", {"", "١٠ mm", length})},
        {"half_a_bolt", "bolts.count=1.5", 1, own("bolts.count", {"", "whole number", "0 to 80"})},
        {"bolts_less_than_none", "bolts.count=-1", 1,
         own("bolts.count", {"", "outside the limits", "0 to 80"})},
        {"too_many_frames", "frames.count=9999", 1,
         own("frames.count", {"", "outside the limits", "0 to 400"})},
        {"no_choice", "floors.kind=swan", 1,
         own("floors.kind", {"", "swan", "did you mean sawn?"})},
        {"no_duration", "case.knockdown_port.duration=for ever", 1,
         own("case.knockdown_port.duration", {"", "for ever", "ten minutes"})},
        {"unknown_metal", "bolts.metal=unobtainium", 1,
         own("bolts.metal", {"", "the catalogue lacks", "a metal of the catalogue"})},
        {"mistyped_wood", "keel.wood=white_ok", 1,
         own("keel.wood", {"", "the catalogue lacks", "did you mean white_oak?"})},
        {"ballast_of_bronze", "ballast.metal=c65500_h02", 1,
         own("ballast.metal", {"", "not cast of", "a lead or an iron"})},
        {"a_target_below_one", "class.keel.target=0.5", 1,
         own("class.keel.target", {"", "0.5", "1 to 10"})},
        {"name_too_long", "hull.name=" + std::string(61, 'x'), 1,
         own("hull.name", {"", "name is x", "1 to 60"})},
        {"name_with_a_tab", "hull.name=a\tb", 1, own("hull.name", {"", "a?b", "plain text"})},
        {"name_not_utf8", "hull.name=a\xff", 1, own("hull.name", {"", "a?", "plain text"})},
        {"empty_note", "note=", 1, {"note", "says nothing", "a few words"}},
    };
}

class BadDecisionTest : public ::testing::TestWithParam<BadDecision> {};

const auto nameOf = [](const auto& param) { return param.param.name; };

}  // namespace

TEST(BadInput, TheTableEveryBadOneIsMadeFromIsGood) {
    const Folder folder;
    folder.write("good.csv", table());
    done(folder, {"import", "good.csv", "--to", "good.fayline"});
}

TEST_P(BadOffsetsTest, IsRefusedWithItsLine) {
    const Folder folder;
    folder.write("bad.csv", GetParam().text);
    refused(folder, {"import", "bad.csv", "--to", "new.fayline"}, 1, GetParam().says);
}
INSTANTIATE_TEST_SUITE_P(BadInput, BadOffsetsTest, ::testing::ValuesIn(badOffsets()), nameOf);

TEST_P(BadDecisionTest, IsRefusedByName) {
    const Folder folder;
    putDemo(folder, "p.fayline");
    refused(folder, {"decide", "p.fayline", GetParam().typed}, GetParam().exit, GetParam().says);
    // Nor is any of it kept when a good decision stands beside it.
    refused(folder, {"decide", "p.fayline", "hull.name=Other", GetParam().typed}, GetParam().exit,
            GetParam().says);
}
INSTANTIATE_TEST_SUITE_P(BadInput, BadDecisionTest, ::testing::ValuesIn(badDecisions()), nameOf);

TEST(BadInput, CommandLinesThatAreWrongExitWithTwo) {
    const Folder folder;
    putDemo(folder, "p.fayline");
    const std::vector<std::pair<Words, Says>> all{
        {{"marins", "p.fayline"}, {"marins", "no such command", "did you mean margins?"}},
        {{"frobnicate", "p.fayline"}, {"frobnicate", "no such command", "fayline --help"}},
        {{"--frobnicate"}, {"--frobnicate", "no such command", "fayline --help"}},
        {{"--version", "x"}, {"--version", "after it", "alone"}},
        {{"margins"}, {"margins", "0 operands", "fayline margins FILE"}},
        {{"margins", ""}, {"margins", "empty", "fayline margins FILE"}},
        {{"margins", "p.fayline", "q.fayline"}, {"margins", "2 operands", "fayline margins FILE"}},
        {{"margins", "p.fayline", "--jsn"}, {"--jsn", "no such option", "did you mean --json?"}},
        {{"margins", "p.fayline", "--json", "--json"}, {"--json", "given twice", "once"}},
        {{"margins", "p.fayline", "--json=yes"}, {"--json", "takes no value", "alone"}},
        {{"margins", "p.fayline", "--json", "--csv"}, {"--csv", "beside --json", "one of the two"}},
        {{"verify", "p.fayline", "--csv"}, {"--csv", "no such option", "--json"}},
        {{"demo"}, {"--to", "not given", "--to FILE"}},
        {{"demo", "--to"}, {"--to", "nothing after it", "project file"}},
        {{"demo", "--to="}, {"--to", "empty", "name"}},
        {{"demo", "here", "--to", "new.fayline"}, {"demo", "1 operand;", "fayline demo --to FILE"}},
        {{"import", "--to", "new.fayline"}, {"import", "0 operands", "OFFSETS.csv"}},
        {{"import", "p.fayline"}, {"--to", "not given", "--to FILE"}},
        {{"decide", "p.fayline"}, {"decide", "1 operand;", "WHAT=VALUE"}},
        {{"decide", "p.fayline", "hull.name=A", "--why"}, {"--why", "nothing after it", "reason"}},
    };
    for (const auto& [words, says] : all) {
        SCOPED_TRACE(words.front() + " " + words.back());
        refused(folder, words, 2, says);
    }
}

TEST(BadInput, FilesThatAreNoProjectsAreRefusedAndLeftAsTheyAre) {
    const Folder folder;
    putBallastHull(folder, "good.fayline");
    const std::string good = bytesOf(folder / "good.fayline");
    folder.write("text.fayline", "a letter to the yard\n");
    folder.write("empty.fayline", "");
    folder.write("cut.fayline", good.substr(0, good.size() / 2));
    std::string newer = good;
    newer[63] = 99;
    folder.write("newer.fayline", newer);
    std::string foreign = good;
    foreign[68] = 'X';
    folder.write("foreign.fayline", foreign);
    std::string altered = good;
    const std::string title = "ballast bolt K.6 diameter to 5/8 in";
    const auto at = altered.find(title);
    ASSERT_NE(at, std::string::npos);
    altered[at + title.size() - 4] = '7';
    folder.write("altered.fayline", altered);
    std::filesystem::create_directory(folder / "folder.fayline");
    const std::vector<std::pair<std::string, std::string>> all{
        {"text.fayline", "not_ours"},    {"empty.fayline", "not_ours"},
        {"cut.fayline", "damaged"},      {"newer.fayline", "newer"},
        {"foreign.fayline", "not_ours"}, {"altered.fayline", "damaged"}};
    for (const auto& [name, outcome] : all) {
        SCOPED_TRACE(name);
        for (const char* command : {"margins", "journal", "undo"})
            refused(folder, {command, name}, 1, {folder / name, "", ""});
        refused(folder, {"decide", name, "hull.name=A"}, 1, {folder / name, "", ""});
        const auto before = folder.digests();
        const Ran verify = runFayline(folder, {"verify", name, "--json"});
        EXPECT_EQ(verify.exit, 1);
        EXPECT_EQ(folder.digests(), before);
        const Json json = Json::parse(verify.out, nullptr, false);
        ASSERT_FALSE(json.is_discarded()) << verify.out;
        EXPECT_EQ(json["outcome"], outcome);
        EXPECT_EQ(json["first_bad_step"].is_null(), name != "altered.fayline") << json;
        EXPECT_FALSE(json["says"].is_null());
    }
    EXPECT_EQ(doneJson(folder, {"verify", "good.fayline", "--json"})["outcome"], "ok");
    refused(folder, {"margins", "folder.fayline"}, 1, {folder / "folder.fayline", "folder", ""});
    refused(folder, {"margins", "/dev/null"}, 1, {"/dev/null", "", ""});
    refused(folder, {"import", "folder.fayline", "--to", "x.fayline"}, 1,
            {"folder.fayline", "not a plain file", "CSV"});
    refused(folder, {"import", "good.fayline", "--to", "x.fayline"}, 1, {"good.fayline:1", "", ""});
    refused(folder, {"import", "none.csv", "--to", "x.fayline"}, 1,
            {"none.csv", "no such file", ""});
    refused(folder, {"demo", "--to", "no/folder/x.fayline"}, 1,
            {folder / "no/folder/x.fayline", "no such folder", "a folder that is there"});
}

TEST(BadInput, TheFirstBadStepOfAnAlteredJournalIsNamed) {
    const Folder folder;
    putDemo(folder, "p.fayline");
    const Json journal = doneJson(folder, {"journal", "p.fayline", "--json"});
    const Json& last = journal["steps"].back();
    std::string bytes = bytesOf(folder / "p.fayline");
    const std::string hash = last["hash"];
    for (auto at = bytes.find(hash); at != std::string::npos; at = bytes.find(hash, at + 1))
        bytes[at] = bytes[at] == '0' ? '1' : '0';
    folder.write("p.fayline", bytes);
    const Ran verify = runFayline(folder, {"verify", "p.fayline", "--json"});
    EXPECT_EQ(verify.exit, 1);
    const Json json = Json::parse(verify.out);
    EXPECT_EQ(json["first_bad_step"], last["step"]);
    EXPECT_EQ(json["step"], last["step"].get<int>() - 1);
}

TEST(BadInput, NamesOfAnyBytesAreRefusedInOneLine) {
    const Folder folder;
    refused(folder, {"margins", "a\nb.fayline"}, 1, {folder / "a?b.fayline", "no such file", ""});
    refused(folder,
            {"margins",
             "a\xff"
             "b.fayline"},
            1, {folder / "a?b.fayline", "no such file", ""});
    folder.write("good.csv", table());
    // A name of any bytes may be given to a project, and its JSON is UTF-8 all the same.
    done(folder, {"import", "good.csv", "--to", "m\xf6we.fayline"});
    const Json json = doneJson(folder, {"margins", "m\xf6we.fayline", "--json"});
    EXPECT_NE(json["project"].get<std::string>().find("we"), std::string::npos);
}

TEST(BadInput, DecisionsThatNothingWouldReadAreRefused) {
    const Folder folder;
    putDemo(folder, "p.fayline");
    for (const char* what : {"case.knockdown_prt.factor=2", "class.kel.target=2", "hull.name=a\nb",
                             "catalogue.wood.white_oak=x"}) {
        SCOPED_TRACE(what);
        refused(folder, {"decide", "p.fayline", what}, 1,
                {std::string(what).substr(0, std::string(what).find('=')), "", ""});
    }
}
