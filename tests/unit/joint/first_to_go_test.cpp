#include <gtest/gtest.h>

#include "joint/work_joint.h"

using namespace fayline;

namespace {

LimitState state(LimitStateKind kind, std::optional<Band> gives, std::optional<Band> apart) {
    LimitState made;
    made.kind = kind;
    made.gives = gives;
    made.apart = apart;
    return made;
}

Band band(double low_N, double high_N) {
    return {newtons(low_N), newtons(high_N)};
}

BasisResult basis() {
    BasisResult made;
    made.lateral = LateralResult{};
    made.lateral->state = state(LimitStateKind::lateral, band(900, 1100), std::nullopt);
    made.withdrawal = WithdrawalResult{};
    made.withdrawal->state = state(LimitStateKind::withdrawal, std::nullopt, band(500, 700));
    made.metal = state(LimitStateKind::metal, band(300, 350), band(2000, 2400));
    made.pullThrough = state(LimitStateKind::pullThrough, std::nullopt, std::nullopt);
    return made;
}

std::vector<LimitStateKind> kindsOf(const std::vector<FirstToGo>& order) {
    std::vector<LimitStateKind> kinds;
    for (const FirstToGo& entry : order) kinds.push_back(entry.kind);
    return kinds;
}

}  // namespace

TEST(FirstToGo, ByWhatComesApartThenByWhatGives) {
    const auto order = firstToGo(basis(), std::nullopt);
    EXPECT_EQ(kindsOf(order),
              (std::vector<LimitStateKind>{LimitStateKind::withdrawal, LimitStateKind::lateral,
                                           LimitStateKind::metal, LimitStateKind::pullThrough}));
    // Withdrawal ends at 700, sideways begins to give at 900: clear. Sideways may come apart
    // anywhere above 900, and that is where the metal breaks: too close.
    EXPECT_FALSE(order[0].tooClose);
    EXPECT_TRUE(order[1].tooClose);
    EXPECT_TRUE(order[2].tooClose);
}

TEST(FirstToGo, OverlappingBandsAreTooClose) {
    BasisResult made = basis();
    made.lateral.reset();
    EXPECT_FALSE(firstToGo(made, std::nullopt)[1].tooClose);
    made.metal->apart = band(650, 900);
    const auto order = firstToGo(made, std::nullopt);
    EXPECT_TRUE(order[0].tooClose && order[1].tooClose);
    made.metal->apart = band(701, 900);
    EXPECT_FALSE(firstToGo(made, std::nullopt)[0].tooClose);
}

TEST(FirstToGo, AlongALoadEachStateIsStretchedByItsPart) {
    const auto order = firstToGo(basis(), JointLoad{newtons(30), newtons(40)});
    // Along it 4/5 pulls and 3/5 shears.
    EXPECT_NEAR(inNewtons(order[0].apart->low), 500 / 0.8, 1e-9);
    EXPECT_NEAR(inNewtons(order[1].gives->low), 900 / 0.6, 1e-9);
    const auto sideways = firstToGo(basis(), JointLoad{newtons(30), {}});
    EXPECT_EQ(kindsOf(sideways), std::vector<LimitStateKind>{LimitStateKind::lateral});
    EXPECT_NEAR(inNewtons(sideways[0].gives->low), 900, 1e-9);
}
