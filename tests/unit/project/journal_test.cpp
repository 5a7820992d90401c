#include "project/journal.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

const StepBy ada{"Ada", "as the surveyor asked", "2026-11-25T10:42:07Z"};

Journal with(const std::vector<std::vector<Journal::NewText>>& decisions) {
    Journal journal;
    for (const auto& texts : decisions) {
        auto step = journal.prepareDecide(texts, "decided", ada);
        EXPECT_TRUE(step) << step.error().line();
        EXPECT_TRUE(journal.append(*step));
    }
    return journal;
}

std::string refusal(const Journal& journal, const Step& step) {
    const auto fit = journal.fits(step);
    return fit ? "fits" : fit.error().code;
}

/// The same with a hash that belongs to it, so that only its sense is in question.
std::string refusalOfSense(const Journal& journal, Step step) {
    step.hash = stepHash(step, journal.tipHash());
    return refusal(journal, step);
}

// Expected values: SHA-256 by Python's hashlib over the bytes laid out by hand as journal.h says.
TEST(JournalTest, testHashEqualsOneMadeByOtherMeans) {
    Journal journal;
    auto first = journal.prepareDecide({{"K.5.diameter", "5/8 in"}, {"hull.name", "M\xC3\xB6we"}},
                                       "ballast bolt K.5 diameter to 5/8 in", ada);
    ASSERT_TRUE(first);
    EXPECT_EQ(first->hash, "9922ee411ccd7f6eadeb7ccf47d2e17b4c4bcd86a9d15bcb73057cf8334a5fd9");
    ASSERT_TRUE(journal.append(*first));
    EXPECT_EQ(journal.stateHash(),
              "b9804aa37dce4297ec181890bfe190cb870c7c09ffecac29923ddcf5153449ab");
    const auto second = journal.prepareUndo({"Ada", "", "2026-11-25T10:43:00Z"});
    ASSERT_TRUE(second);
    EXPECT_EQ(second->hash, "9eaa811a866ea7a7341202d2a71bda38263e82c67213a634a4c087fdee18805c");
}

TEST(JournalTest, testHashTellsEveryFieldAndNoTextFromEmptyText) {
    Step step;
    step.number = 1;
    step.changes = {{"a", std::nullopt, "b"}};
    const std::string hash = stepHash(step, "");
    const auto differs = [&](auto change) {
        Step other = step;
        change(other);
        return stepHash(other, "") != hash;
    };
    EXPECT_NE(stepHash(step, "x"), hash);
    EXPECT_TRUE(differs([](Step& s) { s.number = 2; }));
    EXPECT_TRUE(differs([](Step& s) { s.at = "x"; }));
    EXPECT_TRUE(differs([](Step& s) { s.who = "x"; }));
    EXPECT_TRUE(differs([](Step& s) { s.why = "x"; }));
    EXPECT_TRUE(differs([](Step& s) { s.title = "x"; }));
    EXPECT_TRUE(differs([](Step& s) { s.kind = StepKind::record; }));
    EXPECT_TRUE(differs([](Step& s) { s.target = 1; }));
    EXPECT_TRUE(differs([](Step& s) { s.changes.clear(); }));
    EXPECT_TRUE(differs([](Step& s) { s.changes[0].what = "ab"; }));
    EXPECT_TRUE(differs([](Step& s) { s.changes[0].oldText = ""; }));
    EXPECT_TRUE(differs([](Step& s) { s.changes[0].newText = std::nullopt; }));
    EXPECT_TRUE(differs([](Step& s) { s.hash = "not read"; }) == false);
}

TEST(JournalTest, testDecideKeepsWhatChangesOnly) {
    const Journal journal = with({{{"keel.sided", "4 in"}, {"hull.name", "Gannet"}}});
    const auto step = journal.prepareDecide(
        {{"keel.sided", "4 in"}, {"hull.name", std::nullopt}, {"F9.heel.gauge", "No. 14"}}, "t",
        ada);
    ASSERT_TRUE(step);
    EXPECT_EQ(step->changes, (std::vector<Change>{{"hull.name", "Gannet", std::nullopt},
                                                  {"F9.heel.gauge", std::nullopt, "No. 14"}}));
    EXPECT_EQ(step->number, 2);
    EXPECT_EQ(step->why, "as the surveyor asked");
}

TEST(JournalTest, testSameValueAgainIsNoStep) {
    const Journal journal = with({{{"keel.sided", "4 in"}}});
    EXPECT_EQ(journal.prepareDecide({{"keel.sided", "4 in"}}, "t", ada).error().code, "nothing");
    EXPECT_EQ(journal.prepareDecide({{"ballast.mass", std::nullopt}}, "t", ada).error().code,
              "nothing");
    EXPECT_EQ(journal.prepareDecide({}, "t", ada).error().code, "nothing");
    EXPECT_EQ(Journal().prepareUndo(ada).error().code, "nothing");
    EXPECT_EQ(journal.prepareRedo(ada).error().code, "nothing");
}

TEST(JournalTest, testOneNameTwiceIsRefused) {
    const auto step =
        Journal().prepareDecide({{"keel.sided", "4 in"}, {"keel.sided", "5 in"}}, "t", ada);
    EXPECT_EQ(step.error().line(), "keel.sided: it is given more than once; one value for each");
}

TEST(JournalTest, testUndoAndRedoNameTheirStep) {
    Journal journal;
    ASSERT_TRUE(journal.append(*journal.prepareDecide({{"keel.sided", "4 in"}}, "keel", ada)));
    ASSERT_TRUE(journal.append(*journal.prepareNote("seen by the surveyor", ada)));
    ASSERT_TRUE(journal.append(*journal.prepareDecide({{"hull.name", "Gannet"}}, "name", ada)));
    EXPECT_EQ(journal.nextUndo(), 3);
    EXPECT_EQ(journal.nextUndoTitle(), "name");
    EXPECT_EQ(journal.nextRedo(), std::nullopt);
    ASSERT_TRUE(journal.append(*journal.prepareUndo(ada)));
    EXPECT_EQ(journal.steps().back().title, "Undo: name");
    EXPECT_EQ(journal.steps().back().target, 3);
    EXPECT_EQ(journal.nextUndo(), 1);
    EXPECT_EQ(journal.nextRedo(), 3);
    EXPECT_EQ(journal.nextRedoTitle(), "name");
    ASSERT_TRUE(journal.append(*journal.prepareRedo(ada)));
    EXPECT_EQ(journal.steps().back().title, "Redo: name");
    EXPECT_EQ(journal.decided().at("hull.name"), "Gannet");
}

TEST(JournalTest, testRecordsStandOutsideUndo) {
    Journal journal = with({{{"keel.sided", "4 in"}}});
    const auto drilled = journal.prepareRecord({{"F9.P.heel.2.drilled", "yes"}}, "drilled", ada);
    ASSERT_TRUE(journal.append(*drilled));
    EXPECT_EQ(journal.nextUndo(), 1);
    ASSERT_TRUE(journal.append(*journal.prepareUndo(ada)));
    EXPECT_TRUE(journal.decided().empty());
    EXPECT_EQ(journal.recorded().at("F9.P.heel.2.drilled"), "yes");
    const auto again = journal.prepareRecord({{"F9.P.heel.2.drilled", "yes"}}, "again", ada);
    ASSERT_TRUE(again) << "the same thing may happen twice";
    EXPECT_EQ(again->changes[0].oldText, "yes");
    ASSERT_TRUE(journal.append(*again));
    EXPECT_EQ(journal.nextRedo(), 1) << "a record leaves the redo line alone";
}

TEST(JournalTest, testStepThatDoesNotFitIsRefusedAndNamed) {
    Journal journal = with({{{"keel.sided", "4 in"}}, {{"hull.name", "Gannet"}}});
    const Step good = *journal.prepareDecide({{"keel.sided", "5 in"}}, "t", ada);
    Step step = good;
    step.number = 5;
    EXPECT_EQ(refusalOfSense(journal, step), "journal.number");
    step = good;
    step.title = "altered";
    EXPECT_EQ(refusal(journal, step), "journal.hash");
    EXPECT_EQ(journal.append(step).error().line(),
              "step 3: its check sum does not match what it says; a step is never altered once "
              "written");
    step = good;
    step.changes[0].oldText = "3 in";
    EXPECT_EQ(refusalOfSense(journal, step), "journal.old_text");
    step.hash = stepHash(step, journal.tipHash());
    EXPECT_EQ(journal.append(step).error().line(),
              "step 3: keel.sided is said to have been \"3 in\"; it was \"4 in\"");
    step = good;
    step.changes[0].newText = "4 in";
    EXPECT_EQ(refusalOfSense(journal, step), "journal.changes");
    step = good;
    step.changes.push_back(step.changes[0]);
    EXPECT_EQ(refusalOfSense(journal, step), "journal.changes");
    step = good;
    step.changes.clear();
    EXPECT_EQ(refusalOfSense(journal, step), "journal.changes");
    step = good;
    step.target = 1;
    EXPECT_EQ(refusalOfSense(journal, step), "journal.target");
    EXPECT_EQ(journal.steps().size(), 2U);
    EXPECT_TRUE(journal.append(good));
}

TEST(JournalTest, testUndoMustTakeBackTheNewestStepExactly) {
    Journal journal = with({{{"keel.sided", "4 in"}}, {{"hull.name", "Gannet"}}});
    const Step good = *journal.prepareUndo(ada);
    Step step = good;
    step.target = 1;
    EXPECT_EQ(refusalOfSense(journal, step), "journal.target");
    step.target.reset();
    EXPECT_EQ(refusalOfSense(journal, step), "journal.target");
    step = good;
    step.changes[0].newText = "Fulmar";
    EXPECT_EQ(refusalOfSense(journal, step), "journal.changes");
    step = good;
    step.kind = StepKind::redo;
    EXPECT_EQ(refusalOfSense(journal, step), "journal.target");
    EXPECT_EQ(refusalOfSense(journal, good), "fits");
}

TEST(JournalTest, testTextsThatCannotBeKeptAreRefused) {
    const Journal journal;
    const auto code = [&](const std::string& text, const std::string& title,
                          const std::string& at) {
        const auto step = journal.prepareDecide({{"hull.name", text}}, title, {"Ada", "", at});
        return step ? "fits" : step.error().code;
    };
    const std::string now = ada.at;
    EXPECT_EQ(code("Gannet", "t", now), "fits");
    EXPECT_EQ(code(std::string("a\0b", 3), "t", now), "journal.text");
    EXPECT_EQ(code("M\xF6we", "t", now), "journal.text");
    EXPECT_EQ(code(std::string(1'000'000, 'x'), "t", now), "fits");
    EXPECT_EQ(code(std::string(1'000'001, 'x'), "t", now), "journal.too_long");
    EXPECT_EQ(code("Gannet", std::string(1'001, 'x'), now), "journal.too_long");
    EXPECT_EQ(code("Gannet", "t", "2026-11-25 10:42:07"), "journal.time");
    EXPECT_EQ(code("Gannet", "t", ""), "journal.time");
}

TEST(JournalTest, testLongestTitleCanStillBeUndone) {
    Journal journal;
    ASSERT_TRUE(journal.append(
        *journal.prepareDecide({{"hull.name", "Gannet"}}, std::string(1'000, 'x'), ada)));
    EXPECT_TRUE(journal.prepareUndo(ada));
}

TEST(JournalTest, testFoldStopsAtTheFirstBadStep) {
    const Journal journal =
        with({{{"keel.sided", "4 in"}}, {{"hull.name", "Gannet"}}, {{"keel.sided", "5 in"}}});
    std::vector<Step> steps = journal.steps();
    steps[1].changes[0].newText = "Fulmar";
    const FoldedJournal folded = Journal::fold(steps);
    EXPECT_EQ(folded.firstBadStep, 2);
    EXPECT_EQ(folded.problem->where, "step 2");
    EXPECT_EQ(folded.journal.steps().size(), 1U);
    steps = journal.steps();
    steps.erase(steps.begin() + 1);
    EXPECT_EQ(Journal::fold(steps).firstBadStep, 2) << "a step left out";
    EXPECT_EQ(Journal::fold(journal.steps()).firstBadStep, std::nullopt);
    EXPECT_EQ(Journal::fold(journal.steps()).journal.decided(), journal.decided());
}

TEST(JournalTest, testOrderIsByNumberWhateverTheClockSays) {
    Journal journal;
    for (const char* at : {"2038-01-19T03:14:08Z", "1970-01-01T00:00:00Z", "2026-11-25T10:42:07Z"})
        ASSERT_TRUE(
            journal.append(*journal.prepareDecide({{"hull.name", at}}, "t", {"Ada", "", at})));
    EXPECT_EQ(journal.decided().at("hull.name"), "2026-11-25T10:42:07Z");
    EXPECT_FALSE(Journal::fold(journal.steps()).problem);
}

TEST(JournalTest, testKindNamesReadBack) {
    for (const StepKind kind :
         {StepKind::decide, StepKind::undo, StepKind::redo, StepKind::record, StepKind::note})
        EXPECT_EQ(stepKindNamed(stepKindName(kind)), kind);
    EXPECT_EQ(stepKindNamed("Decide"), std::nullopt);
}

}  // namespace
}  // namespace fayline
