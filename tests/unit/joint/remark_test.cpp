#include "joint/remark.h"

#include <gtest/gtest.h>

#include <set>

#include "any_joint.h"
#include "joint/work_joint.h"

using namespace fayline;
using namespace fayline::test;

TEST(Remark, EveryRuleHasANameAndASentenceOfItsOwn) {
    std::set<std::string> names, texts;
    const int last = static_cast<int>(Rule::slantNotCredited);
    for (int i = 0; i <= last; ++i) {
        const Remark remark{static_cast<Rule>(i), 1, inches(1), inches(2), 0.8};
        EXPECT_TRUE(names.insert(std::string(nameOf(remark.rule))).second) << i;
        EXPECT_TRUE(texts.insert(textOf(remark)).second) << i;
        EXPECT_EQ(textOf(remark).find('{'), std::string::npos) << textOf(remark);
        EXPECT_EQ(sentenceOf(remark.rule).find('{'), std::string_view::npos)
            << sentenceOf(remark.rule);
    }
}

TEST(Remark, FiguresStandInTheSentence) {
    EXPECT_EQ(textOf({Rule::gravityOutside, 1, {}, {}, 0.88}).substr(0, 42),
              "specific gravity 0.88 of the second timber");
    const std::string text = textOf({Rule::shorterThanTheCode, -1, inches(1), inches(1.5), 0});
    EXPECT_NE(text.find("1.00 in"), std::string::npos) << text;
    EXPECT_NE(text.find("1.50 in"), std::string::npos) << text;
}

TEST(Remark, OnceIsEnough) {
    std::vector<Remark> remarks;
    addOnce(remarks, {Rule::washerMayDish, -1, {}, {}, 0});
    addOnce(remarks, {Rule::washerMayDish, -1, {}, {}, 0});
    EXPECT_EQ(remarks.size(), 1U);
}

// Wet wood under Eurocode 5: the design load may stand above what starts to give, and its working
// says why.
TEST(Remark, AboveWhatStartsToGiveIsExplained) {
    Joint joint = plankScrew();
    joint.service = Service::wet;
    joint.duration = Duration::tenMinutes;
    JointTraces traces;
    const auto result = workJoint(joint, &traces).value();
    ASSERT_TRUE(worksAboveGiving(result.ec5.lateral->state));
    EXPECT_FALSE(worksAboveGiving(result.us.lateral->state));
    const Trace& trace = traces.at({Basis::ec5, LimitStateKind::lateral});
    bool said = false;
    for (const std::string& note : trace.notes)
        said = said || note.find(whyAboveGiving(Basis::ec5)) != std::string::npos;
    EXPECT_TRUE(said);
}
