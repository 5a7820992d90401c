#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "journal_model.h"

namespace fayline {
namespace {

using model::Move;
using model::MoveKind;

rc::Gen<Move> anyMove() {
    const auto what = rc::gen::element<std::string>("F8.heel.gauge", "F9.heel.gauge", "keel.sided",
                                                    "hull.name", "K.5.diameter", "note");
    const auto text = rc::gen::maybe(rc::gen::element<std::string>(
        "", "38 mm", "1 1/2 in", "No. 14", "\xC3\xB6 \xE2\x8C\x80 5/16\xE2\x80\xB3", "'; drop"));
    return rc::gen::map(
        rc::gen::pair(rc::gen::weightedElement<MoveKind>({{6, MoveKind::decide},
                                                          {4, MoveKind::undo},
                                                          {3, MoveKind::redo},
                                                          {1, MoveKind::record},
                                                          {1, MoveKind::note},
                                                          {1, MoveKind::reopen}}),
                      rc::gen::resize(
                          4, rc::gen::container<std::map<std::string, std::optional<std::string>>>(
                                 what, rc::gen::map(text,
                                                    [](auto maybe) {
                                                        return maybe ? std::optional<std::string>(
                                                                           *maybe)
                                                                     : std::nullopt;
                                                    })))),
        [](auto both) {
            return Move{both.first, both.second};
        });
}

bool anyWalkDiffers() {
    return !rc::check("a journal behaves as a list of whole states", [] {
        const auto moves = *rc::gen::resize(120, rc::gen::container<std::vector<Move>>(anyMove()));
        const auto wrong = model::firstDifference(moves);
        if (wrong) RC_FAIL(*wrong);
        RC_TAG(moves.size() / 20 * 20);
    });
}

#ifndef JOURNAL_BROKEN_ON_PURPOSE
TEST(JournalWalkTest, testRandomWalksEqualListsOfStates) {
    EXPECT_FALSE(anyWalkDiffers());
}
#else
TEST(JournalWalkTest, testJournalBrokenOnPurposeIsFoundOut) {
    EXPECT_TRUE(anyWalkDiffers());
}
#endif

}  // namespace
}  // namespace fayline
