// decide, undo and redo, each in a process of its own, as a script or two people would.

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <regex>

#include "program.h"

using namespace fayline::acceptance;

namespace {

class Decisions : public ::testing::Test {
  protected:
    void SetUp() override { putBallastHull(folder, "p.fayline"); }
    std::string run(Words words) {
        words.insert(words.begin() + 1, "p.fayline");
        return done(folder, words);
    }
    std::string decide(const std::string& what) { return run({"decide", what}); }
    Json journal() { return doneJson(folder, {"journal", "p.fayline", "--json"}); }
    Json lastStep() { return journal()["steps"].back(); }
    Text margins() { return marginsWithoutStep(folder, "p.fayline"); }
    int steps() { return journal()["step"]; }
    Folder folder;
};

}  // namespace

TEST_F(Decisions, UndoGivesTheSameMarginsToTheLastByte) {
    const Text before = margins();
    decide("K.6.diameter=7/8 in");
    const Text after = margins();
    EXPECT_NE(after, before) << "the decision changed nothing, so undo proves nothing";
    run({"undo"});
    EXPECT_EQ(margins(), before);
    run({"redo"});
    EXPECT_EQ(margins(), after);
}

TEST_F(Decisions, UndoAndRedoWalkTheWholeWayAcrossReopenings) {
    std::vector<Text> states{margins()};
    for (const char* what : {"K.6.diameter=7/8 in", "F14-F24.floor.throat=200 mm",
                             "ballast.mass=2700 kg", "keel.wood=iroko"}) {
        decide(what);
        states.push_back(margins());
        ASSERT_NE(states.back(), states[states.size() - 2]) << what;
    }
    for (std::size_t i = states.size() - 1; i > 0; --i) {
        run({"undo"});
        EXPECT_EQ(margins(), states[i - 1]) << i;
    }
    for (std::size_t i = 1; i < states.size(); ++i) {
        run({"redo"});
        EXPECT_EQ(margins(), states[i]) << i;
    }
    const Ran nothing = runFayline(folder, {"redo", "p.fayline"});
    EXPECT_EQ(nothing.exit, 0);
    EXPECT_EQ(nothing.out, "");
    EXPECT_EQ(nothing.err, "fayline: note: there is nothing left to redo\n");
    // A decision after an undo ends the line of redo.
    run({"undo"});
    decide("hull.name=Other");
    EXPECT_TRUE(journal()["redo"].is_null());
    EXPECT_EQ(runFayline(folder, {"redo", "p.fayline"}).out, "");
    EXPECT_EQ(doneJson(folder, {"verify", "p.fayline", "--json"})["outcome"], "ok");
}

TEST_F(Decisions, UndoGoesBackToTheFirstStepAndStops) {
    const int made = steps();
    for (int i = 0; i < made; ++i) run({"undo"});
    EXPECT_TRUE(journal()["undo"].is_null());
    EXPECT_EQ(runFayline(folder, {"undo", "p.fayline"}).err,
              "fayline: note: there is nothing left to undo\n");
    EXPECT_EQ(steps(), 2 * made) << "undoing adds steps and removes none";
    const Json margins = doneJson(folder, {"margins", "p.fayline", "--json"});
    EXPECT_TRUE(margins["checks"].empty());
    EXPECT_FALSE(margins["missing"].empty());
}

TEST_F(Decisions, ARangeIsOneStepWithAChangeEach) {
    const int before = steps();
    EXPECT_EQ(decide("F14-F16.floor.throat=7 1/2 in"),
              "step " + std::to_string(before + 1) + ": F14 floor throat to 7 1/2 in and 2 more\n");
    const Json step = lastStep();
    ASSERT_EQ(step["changes"].size(), 3U);
    int frame = 14;
    for (const Json& change : step["changes"]) {
        EXPECT_EQ(change["what"], "F" + std::to_string(frame++) + ".floor.throat");
        EXPECT_EQ(change["new"], "7 1/2 in") << "kept as typed";
        EXPECT_TRUE(change["old"].is_null());
    }
    decide("K.2-K.4.diameter=3/4 in");
    EXPECT_EQ(lastStep()["changes"].size(), 3U);
    decide("K.2-4.diameter=5/8 in");
    const Json again = lastStep();
    ASSERT_EQ(again["changes"].size(), 3U);
    EXPECT_EQ(again["changes"][0]["old"], "3/4 in");
    EXPECT_EQ(steps(), before + 3);
}

TEST_F(Decisions, ALetteredFrameLiesInItsRange) {
    decide("F15A.frame.x=4105 mm");
    decide("F15-F16.floor.throat=190 mm");
    const Json step = lastStep();
    ASSERT_EQ(step["changes"].size(), 3U);
    EXPECT_EQ(step["changes"][1]["what"], "F15A.floor.throat");
}

TEST_F(Decisions, SeveralAtOnceAreOneStepOrNone) {
    const int before = steps();
    run({"decide", "K.1.diameter=3/4 in", "K.2.diameter=3/4 in", "--why", "as delivered", "--who",
         "Ann"});
    const Json step = lastStep();
    EXPECT_EQ(step["changes"].size(), 2U);
    EXPECT_EQ(step["why"], "as delivered");
    EXPECT_EQ(step["who"], "Ann");
    const auto bytes = folder.digests();
    const Ran ran =
        runFayline(folder, {"decide", "p.fayline", "K.3.diameter=3/4 in", "K.4.diameter=5"});
    EXPECT_EQ(ran.exit, 1);
    EXPECT_EQ(folder.digests(), bytes) << "half of a refused step was written";
    EXPECT_EQ(steps(), before + 1);
}

TEST_F(Decisions, AnEmptyValueGoesBackToTheRule) {
    const Text before = margins();
    decide("K.5.corrosion=2 mm");
    EXPECT_NE(margins(), before);
    EXPECT_NE(decide("K.5.corrosion=").find("back to the rule"), std::string::npos);
    EXPECT_EQ(margins(), before);
    const Json change = lastStep()["changes"][0];
    EXPECT_EQ(change["old"], "2 mm");
    EXPECT_TRUE(change["new"].is_null());
}

TEST_F(Decisions, TheSameValueAgainIsNoStep) {
    const auto before = folder.digests();
    for (const char* what : {"K.6.diameter=5/8 in", "K.6.diameter= 5/8 in ", "K.6.corrosion="}) {
        const Ran ran = runFayline(folder, {"decide", "p.fayline", what});
        EXPECT_EQ(ran.exit, 0) << what;
        EXPECT_EQ(ran.out, "") << what;
        EXPECT_EQ(ran.err.rfind("fayline: note: ", 0), 0U) << ran.err;
        EXPECT_EQ(folder.digests(), before) << what;
    }
}

TEST_F(Decisions, TheSameLengthInOtherUnitsGivesTheSameMargins) {
    const Text before = margins();
    decide("keel.sided=7 in");
    EXPECT_NE(margins(), before);
    run({"undo"});
    decide("bolts.washer_thickness=0.6 cm");
    EXPECT_EQ(margins(), before);
    decide("keel.moulded=0-5-7+");  // 5 15/16 in
    const Text dashes = margins();
    decide("keel.moulded=5 15/16 in");
    EXPECT_EQ(margins(), dashes);
    decide("keel.moulded=150.8125 mm");
    EXPECT_EQ(margins(), dashes);
}

TEST_F(Decisions, ANoteIsKeptAndChangesNothing) {
    const Text before = margins();
    decide("note=Surveyor came; wants the old washers out");
    const Json step = lastStep();
    EXPECT_EQ(step["kind"], "note");
    EXPECT_EQ(step["title"], "Surveyor came; wants the old washers out");
    EXPECT_TRUE(step["changes"].empty());
    EXPECT_EQ(margins(), before);
    run({"undo"});
    EXPECT_EQ(lastStep()["kind"], "undo");
    EXPECT_NE(margins(), before) << "undo passes notes over and takes back the decision before";
}

TEST_F(Decisions, UndoAndRedoNameTheStepTheyActOn) {
    decide("hull.name=Petrel");
    const int decided = steps();
    run({"undo", "--why", "spelt wrong"});
    const Json undo = lastStep();
    EXPECT_EQ(undo["kind"], "undo");
    EXPECT_EQ(undo["target"], decided);
    EXPECT_EQ(undo["why"], "spelt wrong");
    EXPECT_EQ(undo["changes"][0]["old"], "Petrel");
    EXPECT_EQ(undo["changes"][0]["new"], "Hollin");
    EXPECT_EQ(journal()["redo"], decided);
    run({"redo"});
    EXPECT_EQ(lastStep()["kind"], "redo");
    EXPECT_EQ(lastStep()["target"], decided);
    EXPECT_EQ(journal()["project"], "Petrel");
}

TEST_F(Decisions, TextInAnyLanguageComesBackAsTyped) {
    const std::string reason = "Größe nach Maß — 木の船, \"¾ Zoll\", \\ , \t?";
    decide("K.1.reason=" + reason.substr(0, reason.size() - 3));
    EXPECT_EQ(lastStep()["changes"][0]["new"], reason.substr(0, reason.size() - 3));
    run({"decide", "hull.name=Möwe", "--who", "Åse"});
    EXPECT_EQ(journal()["project"], "Möwe");
    EXPECT_NE(run({"journal"}).find("Åse"), std::string::npos);
}

TEST_F(Decisions, TheCatalogueRowADecisionLeansOnIsKeptWithIt) {
    decide("keel.wood=iroko");
    const Json step = lastStep();
    bool kept = false;
    for (const Json& change : step["changes"])
        kept = kept || change["what"].get<std::string>().rfind("catalogue.wood.iroko", 0) == 0;
    EXPECT_TRUE(kept) << step;
}
