#include "load/fastening.h"

#include <algorithm>
#include <cmath>

namespace fayline {
namespace {

/// Arm fastenings do not share evenly: the group is loaded out of its middle. Judgement until the
/// frame's stiffness is worked out.
constexpr double armUnevenness = 1.25;
/// Part of a frame's load the heel fastenings may take before they slip: between a twentieth and a
/// half, by heel detail and bedding (judgement).
constexpr double heelPartLowest = 0.05;
constexpr double heelPartHighest = 0.5;

/// Writes the working where it is wanted.
class Teller {
  public:
    explicit Teller(Trace* trace) : trace_(trace) {}
    void say(const char* symbol, const char* meaning, TraceValue value, const char* source = "",
             std::optional<Standing> standing = std::nullopt) {
        if (trace_ != nullptr)
            trace_->lines.push_back({symbol, meaning, std::move(value), source, standing});
    }

  private:
    Trace* trace_;
};

SetDemand nothing(std::string why) {
    SetDemand demand;
    demand.why = std::move(why);
    return demand;
}

SetDemand notKnown(std::string why) {
    SetDemand demand = nothing(std::move(why));
    demand.known = false;
    return demand;
}

bool aboutPlanks(LoadCase loadCase) {
    return loadCase == LoadCase::seaBottom || loadCase == LoadCase::seaSide ||
           loadCase == LoadCase::springback;
}

SetDemand armDemand(const FasteningSet& set, const FrameLoad& load, Teller& tell) {
    if (load.loadCase == LoadCase::swelling) {
        SetDemand demand;
        demand.lateral = load.hoop / static_cast<double>(set.count);
        tell.say("H", "pull in the frame from swollen planking", load.hoop,
                 "crushing stress times a third of the planking times the frames' spacing",
                 Standing::judgement);
        tell.say("n", "fastenings in the arm", static_cast<double>(set.count));
        tell.say("V", "on each fastening", demand.lateral);
        return demand;
    }
    if (aboutPlanks(load.loadCase)) return nothing("this case loads the planking only");
    if (!load.bears) return nothing("no load of the keel reaches this floor");
    if (!set.spread) return notKnown("there are no arm fastenings to measure between");
    const Force couple = load.moment / *set.spread;
    const Force direct = (load.up + load.down) / 2.0;
    const Force up = couple + direct;
    const Force across = load.sideways / 2.0;
    SetDemand demand;
    demand.lateral =
        armUnevenness * newtons(std::hypot(up.si(), across.si())) / static_cast<double>(set.count);
    tell.say("M", "the frame's share of the case's moment, the larger of tributary and rigid",
             load.moment, "statics", Standing::derived);
    tell.say("B", "between the middles of the two arms' fastenings", *set.spread);
    tell.say("M/B", "on each arm, up on one side and down on the other", couple);
    tell.say("P/2", "half of what the keel pushes up or pulls down", direct);
    tell.say("Y/2", "half of the sideways share, square to the others", across);
    tell.say("k", "the group is loaded out of its middle", armUnevenness, "", Standing::judgement);
    tell.say("n", "fastenings in the arm", static_cast<double>(set.count));
    tell.say("V", "on the worst fastening", demand.lateral);
    return demand;
}

SetDemand heelDemand(const FasteningSet& set, const FrameLoad& load, Teller& tell) {
    if (load.loadCase == LoadCase::swelling)
        return nothing("the floor's arms hold the frames together against swelling");
    if (aboutPlanks(load.loadCase)) return nothing("this case loads the planking only");
    if (!load.bears) return nothing("no load of the keel reaches this frame");
    const double part = set.floorHere ? heelPartHighest : 1.0;
    const auto count = static_cast<double>(set.count);
    SetDemand demand;
    if (set.floorHere) {
        demand.lowest = heelPartLowest / heelPartHighest;
        demand.band =
            "the heels' share is judged to lie between a twentieth and a half of the frame's load; "
            "should they slip, the floor's arms carry the whole, and are checked for it";
    }
    tell.say("share", "part of the frame's load on its heels, highest of a twentieth to a half",
             part, "", Standing::judgement);
    tell.say("M", "the frame's share of the case's moment", load.moment, "statics",
             Standing::derived);
    tell.say("b", "keel, sided", set.keelSided);
    const Force straight = part * (load.up + load.down) / 2.0 / count;
    const Force across = part * load.sideways / 2.0 / count;
    if (set.heel == HeelPull::shear) {
        demand.lateral = part * load.moment / set.keelSided / count + straight;
        tell.say("V", "on each fastening, up and down the keel's side", demand.lateral);
    } else {
        // Drawn on the windward side against the lee half of the keel: a triangle's lever.
        demand.axial = part * load.moment / (2.0 / 3.0 * set.keelSided) / count +
                       part * load.down / 2.0 / count;
        demand.lateral = across;
        tell.say("T", "drawn, on each fastening", demand.axial);
        tell.say("V", "sideways, on each fastening", demand.lateral);
    }
    return demand;
}

SetDemand floorDemand(const FasteningSet& set, const FrameLoad& load, Teller& tell) {
    if (!loadsTheKeel(load.loadCase)) return nothing("this case does not load the keel");
    if (set.ballastBoltHere) return nothing("the ballast bolt through this floor carries it");
    if (!load.bears) return nothing("no load of the keel reaches this floor");
    const auto count = static_cast<double>(set.count);
    SetDemand demand;
    const Length lever = 2.0 / 3.0 * (set.keelSided / 2.0);
    demand.axial = load.moment / lever / count + load.down / count;
    demand.lateral = load.sideways / count;
    tell.say("M", "the frame's share of the case's moment", load.moment, "statics",
             Standing::derived);
    tell.say("z", "lever: from the middle to where the lee half of the keel presses", lever,
             "a triangle of pressure", Standing::derived);
    tell.say("T", "drawn, on each fastening", demand.axial);
    tell.say("V", "sideways, on each fastening", demand.lateral);
    if (demand.axial <= Force{} && demand.lateral <= Force{})
        demand.why = "this case presses floor and keel together";
    return demand;
}

/// Planks swell against each other round a curved frame and press off it.
SetDemand thrustDemand(const FasteningSet& set, const FrameLoad& load, Length length,
                       Teller& tell) {
    if (load.loadCase == LoadCase::seaBottom || load.loadCase == LoadCase::seaSide)
        return nothing("sea pressure presses planks on to the frames");
    if (load.loadCase != LoadCase::swelling) return nothing("this case does not draw planks off");
    if (!set.radius) return nothing("the frame is flat or hollow here: swelling presses planks on");
    if (set.seam.si() <= 0)
        return notKnown("the planking's wood is not decided, or has no crushing stress");
    const ForcePerLength seam = load.settings.factor * (set.seam * (set.thickness / 3.0));
    SetDemand demand;
    demand.axial = seam / *set.radius * length * set.width / static_cast<double>(set.count);
    tell.say("f", "wet side grain of the planking crushes at", set.seam, "mean, wet",
             Standing::derived);
    tell.say("t/3", "depth of the seam that touches", set.thickness / 3.0,
             "common practice, no published source", Standing::commonPractice);
    tell.say("R", "radius of the frame's curve here", *set.radius);
    tell.say("s", "length of plank it holds", length);
    tell.say("w", "width of the plank", set.width);
    tell.say("n", "fastenings here", static_cast<double>(set.count));
    tell.say("T", "thrust off the frame on each fastening: f·t/3/R·s·w/n", demand.axial);
    return demand;
}

/// Between two frames the garboard's lower half hangs on its own edge. What a rolling keel asks of
/// it wants the frames' stiffness; the floors are checked for the whole of that.
SetDemand garboardDemand(const FasteningSet& set, const FrameLoad& load, Teller& tell) {
    if (!loadsTheKeel(load.loadCase)) return thrustDemand(set, load, set.spacing / 2.0, tell);
    if (!load.bears) return nothing("none of the keel's load comes to this frame");
    return notKnown(
        "how far the keel's roll opens the garboard's seam is not worked out: it wants the "
        "stiffness of frames and floors, which are checked for the whole of the keel's load");
}

/// A plank end bent to the hull wants to spring away from the rabbet.
SetDemand hoodDemand(const FasteningSet& set, const FrameLoad& load, Teller& tell) {
    if (load.loadCase != LoadCase::springback)
        return nothing("this case does not draw plank ends off");
    if (set.hollowBend)
        return nothing("the plank runs hollow to its end: springing back presses the end on");
    if (!set.bendRadius || set.bendArm <= Length{})
        return nothing("the plank runs straight to its end");
    if (set.stiffness.si() <= 0)
        return notKnown("the planking's wood is not decided, or has no stiffness");
    const Length t = set.thickness;
    const Moment moment = set.stiffness * (set.width * t * t) / 12.0 * (t / *set.bendRadius);
    SetDemand demand;
    demand.axial = load.settings.factor * moment / set.bendArm / static_cast<double>(set.count);
    tell.say("E", "stiffness of the wet plank", set.stiffness, "mean of clear wood",
             Standing::derived);
    tell.say("R", "radius of its bend at the first frame, square to its face", *set.bendRadius);
    tell.say("M", "moment that holds the bend: E·w·t³/12/R", moment);
    tell.say("a", "from the end to the next frame", set.bendArm);
    tell.say("T", "on each fastening: M/a/n", demand.axial);
    return demand;
}

}  // namespace

FrameLoad raisedBy(FrameLoad load, Length rise, Trace* trace) {
    Teller tell(trace);
    if (load.moment > Moment{} && load.sideways > Force{} && rise > Length{}) {
        tell.say("M_0", "the frame's share of the case's moment, about the keel axis", load.moment,
                 "statics", Standing::derived);
        tell.say("Y", "its share of the sideways force", load.sideways);
        tell.say("c", "from the keel axis up to where it is passed on: M = M_0 + Y·c", rise);
    }
    load.moment += load.sideways * rise;
    return load;
}

SetDemand demandOn(const FasteningSet& set, const FrameLoad& load, Trace* trace) {
    Teller tell(trace);
    if (set.count <= 0) return nothing("there is none");
    if (set.group == "arm") return armDemand(set, raisedBy(load, set.rise, trace), tell);
    if (set.group == "heel") return heelDemand(set, raisedBy(load, set.rise, trace), tell);
    if (set.group == "floor") return floorDemand(set, raisedBy(load, set.rise, trace), tell);
    if (set.group == "plank") return thrustDemand(set, load, set.spacing, tell);
    if (set.group == "butt") return thrustDemand(set, load, set.spacing / 2.0, tell);
    if (set.group == "hood") return hoodDemand(set, load, tell);
    if (set.group == "garboard") return garboardDemand(set, load, tell);
    if (set.group == "backbone")
        return notKnown(
            "what loads a backbone joint is not worked out yet: the keel's bending between the "
            "floors, and at its ends rig and rudder, are missing");
    return notKnown("the load on this joint is not worked out yet");
}

Force swellingHoop(Stress seam, Length planking, Length spacing) {
    return seam * (planking / 3.0 * spacing);
}

FloorLoad floorLoad(Length spread, Length keelSided, const FrameLoad& load, Trace* trace) {
    Teller tell(trace);
    FloorLoad result;
    const Force reaction = load.moment / spread;
    const Force direct = (load.up + load.down) / 2.0;
    const Length arm = max(Length{}, spread - keelSided) / 2.0;
    result.bending = (reaction + direct) * arm;
    const Force between = keelSided.si() > 0 ? abs(load.moment / keelSided - reaction) : Force{};
    result.shear = max(reaction + direct, between);
    tell.say("M", "the frame's share of the case's moment", load.moment, "statics",
             Standing::derived);
    tell.say("B", "between the middles of the two arms' fastenings", spread);
    tell.say("s", "keel, sided: the couple's width", keelSided);
    tell.say("R", "on each arm", reaction + direct);
    tell.say("M_max", "bending beside the keel: R·(B−s)/2", result.bending, "statics",
             Standing::derived);
    tell.say("V_max", "shear: the larger of R and M/s − M/B", result.shear, "statics",
             Standing::derived);
    return result;
}

}  // namespace fayline
