#include <algorithm>
#include <array>
#include <cmath>

#include "joint/joint_result.h"
#include "quantity/display.h"

namespace fayline {
namespace {

struct Words {
    std::string_view what, met, missed;
};

// {by} is how much is missing or too much.
constexpr std::array<Words, 24> all{{
    {"thread_bound", "the plain shank reaches the inner timber",
     "thread-bound: the thread still grips the outer timber, so the joint cannot be drawn tight; a "
     "longer shank or a deeper counterbore, short by {by}"},
    {"penetration", "six diameters or more in the inner timber",
     "traditional, shorter than the code: the code wants six diameters in the inner timber"},
    {"tip_out", "wood enough beyond the point", "too little wood beyond the point, by {by}"},
    {"counterbore", "two thirds of the outer timber left under the head",
     "counterbore deeper than a third of the outer timber"},
    {"bung_depth", "deep enough to hold a bung", "too shallow for a bung: fill it instead"},
    {"bung", "the head goes down the counterbore",
     "the head does not go down the counterbore, by {by}"},
    {"slip_fit", "the outer timber slips on the shank",
     "the outer timber is not slip-fit: it hangs on the screw and leaves it thread-bound; bore it "
     "wider by {by}"},
    {"pilot", "lead hole wide enough for this wood",
     "lead hole smaller than the code's for this wood, by {by}: the screw may twist off or split "
     "it"},
    {"pilot_wide", "lead hole no wider than the root",
     "lead hole wider than the root by {by}: the thread loses hold"},
    {"pilot_tip", "the bit tapers as the root does",
     "the bit is thicker at its point than the root is there, by {by}"},
    {"bit_long", "the bit is no longer than the screw",
     "the bit is longer than the screw by {by}: it leaves a void beyond the point"},
    {"bit_short", "the bit is only a little shorter than the screw",
     "the bit is shorter than the screw by more than a diameter, by {by}: the point drives in "
     "solid wood"},
    {"stop_collar", "stop collar set for counterbore and bit", "the stop collar is off by {by}"},
    {"heel_embedment", "1-1/2 in or more in the keel",
     "a heel screw wants 1-1/2 in or more in the keel; short by {by}"},
    {"hole_fit", "the bolt goes in", "the hole is smaller than the bolt by {by}"},
    {"hole_loose", "no more than 1/16 in over the bolt",
     "looser than the 1/16 in over the bolt the codes allow, by {by}"},
    {"beyond_nut", "a thread or more shows beyond each nut",
     "less than a thread shows beyond each nut: longer by {by}"},
    {"drift_hole", "the hole is no wider than the drift",
     "the hole is wider than the drift by {by}: it does not hold"},
    {"corner_bite", "the corners bite into the wood of a round hole",
     "the corners do not reach the wood of the hole, by {by}"},
    {"square_hole", "the hole takes the bar without splitting",
     "the hole is much narrower than the side of the bar, by {by}: the wood may split"},
    {"rivet_hole", "the rivet fits its hole",
     "the hole is wider than the rivet by more than 1/64 in, by {by}: the shank buckles when "
     "peened"},
    {"stand_off", "enough stands beyond the rove to peen",
     "too little stands beyond the rove to peen, by {by}"},
    {"stand_off_most", "no more stands beyond the rove than can be peened",
     "more stands beyond the rove than can be peened without bending, by {by}"},
    {"", "", ""},
}};

}  // namespace

std::string GeometryFinding::says() const {
    const auto* words =
        std::find_if(all.begin(), all.end() - 1, [&](const Words& w) { return w.what == what; });
    if (what == "tip_out" && has.si() < 0.0) return "the point comes out by " + bothUnits(-has);
    std::string text(met ? words->met : words->missed);
    const auto at = text.find("{by}");
    if (at != std::string::npos) text.replace(at, 4, bothUnits(abs(needs - has)));
    return text;
}

}  // namespace fayline
