#include "table_builder.h"

namespace fayline::table {
namespace {

constexpr Span place{-200, 200, "-200 m to 200 m"};
constexpr Span timber{0.005, 2, "5 mm to 2 m"};

Field keelLength(const char* name, Span span, const char* label, const char* help,
                 std::optional<Length> KeelDecisions::*member) {
    return {
        std::string("keel.") + name,
        ValueKind::length,
        span.low,
        span.high,
        span.words,
        {},
        "keel",
        label,
        help,
        setter<Length>([member](Project & p, const Address&) -> auto& { return p.keel.*member; })};
}

template <typename T>
Field frameField(const char* name, ValueKind kind, Span span, const char* label, const char* help,
                 std::optional<T> FrameDecisions::*member) {
    return {std::string("F#.frame.") + name,
            kind,
            span.low,
            span.high,
            span.words,
            {},
            "frame",
            label,
            help,
            entrySetter<T, FrameDecisions>(
                [](Project & p) -> auto& { return p.frame; },
                [member](auto& f) -> auto& { return f.*member; })};
}

template <typename T>
void floorField(std::vector<Field>& rows, const char* name, ValueKind kind, Span span,
                std::vector<std::string> choices, const char* label, const char* help,
                std::optional<T> FloorDecisions::*member) {
    rows.push_back(
        {std::string("floors.") + name, kind, span.low, span.high, span.words, choices, "floors",
         label, help,
         setter<T>([member](Project & p, const Address&) -> auto& { return p.floors.*member; })});
    rows.push_back({std::string("F#.floor.") + name, kind, span.low, span.high, span.words, choices,
                    "floor", label, help,
                    entrySetter<T, FloorDecisions>(
                        [](Project & p) -> auto& { return p.floor; },
                        [member](auto& f) -> auto& { return f.*member; })});
}

}  // namespace

std::vector<Field> structureRows() {
    std::vector<Field> rows{
        {"keel.wood",
         ValueKind::woodName,
         0,
         0,
         "a wood of the catalogue",
         {},
         "keel",
         "wood",
         "Wood of the keel timber.",
         setter<std::string>([](Project & p, const Address&) -> auto& { return p.keel.wood; })},
        keelLength("from", place, "fore end", "Where the keel timber begins, measured aft.",
                   &KeelDecisions::from),
        keelLength("to", place, "after end", "Where the keel timber ends, measured aft.",
                   &KeelDecisions::to),
        keelLength("underside_fore", place, "underside, fore end",
                   "Height of the keel timber's lower face at its fore end.",
                   &KeelDecisions::undersideFore),
        keelLength("underside_aft", place, "underside, after end",
                   "Height of the keel timber's lower face at its after end.",
                   &KeelDecisions::undersideAft),
        keelLength("sided", timber, "siding", "Breadth of the keel timber.", &KeelDecisions::sided),
        keelLength("moulded", timber, "moulding", "Depth of the keel timber.",
                   &KeelDecisions::moulded),

        {"frames.first",
         ValueKind::length,
         place.low,
         place.high,
         place.words,
         {},
         "frames",
         "first frame",
         "Where frame F1 stands, measured aft.",
         setter<Length>([](Project & p, const Address&) -> auto& { return p.frames.first; })},
        {"frames.spacing",
         ValueKind::length,
         0.03,
         3,
         "30 mm to 3 m",
         {},
         "frames",
         "room and space",
         "From the middle of one frame to the middle of the next.",
         setter<Length>([](Project & p, const Address&) -> auto& { return p.frames.spacing; })},
        {"frames.count",
         ValueKind::count,
         0,
         400,
         "0 to 400",
         {},
         "frames",
         "number of frames",
         "How many frames, counted from forward.",
         setter<int>([](Project & p, const Address&) -> auto& { return p.frames.count; })},
        {"frames.wood",
         ValueKind::woodName,
         0,
         0,
         "a wood of the catalogue",
         {},
         "frames",
         "wood",
         "Wood of the frames.",
         setter<std::string>([](Project & p, const Address&) -> auto& { return p.frames.wood; })},
        {"frames.sided",
         ValueKind::length,
         timber.low,
         timber.high,
         timber.words,
         {},
         "frames",
         "siding",
         "Frame size fore and aft.",
         setter<Length>([](Project & p, const Address&) -> auto& { return p.frames.all.sided; })},
        {"frames.moulded",
         ValueKind::length,
         timber.low,
         timber.high,
         timber.words,
         {},
         "frames",
         "moulding",
         "Frame size in and out.",
         setter<Length>([](Project & p, const Address&) -> auto& { return p.frames.all.moulded; })},
        {"frames.heel_detail",
         ValueKind::choice,
         0,
         0,
         "",
         {"socketed", "on_top", "beside", "continuous", "half_frames"},
         "frames",
         "heel detail",
         "How the frames' heels meet the keel.",
         setter<std::string>(
             [](Project & p, const Address&) -> auto& { return p.frames.all.heelDetail; })},
        frameField<Length>(
            "x", ValueKind::length, place, "place as measured",
            "Where this frame stands in the hull, measured aft. Stands before the even spacing.",
            &FrameDecisions::x),
        frameField<Length>("sided", ValueKind::length, timber, "siding", "Frame size fore and aft.",
                           &FrameDecisions::sided),
        frameField<Length>("moulded", ValueKind::length, timber, "moulding",
                           "Frame size in and out.", &FrameDecisions::moulded),
        {"F#.frame.heel_detail",
         ValueKind::choice,
         0,
         0,
         "",
         {"socketed", "on_top", "beside", "continuous", "half_frames"},
         "frame",
         "heel detail",
         "How this frame's heel meets the keel.",
         entrySetter<std::string, FrameDecisions>(
             [](Project & p) -> auto& { return p.frame; },
             [](auto& f) -> auto& { return f.heelDetail; })},
        frameField<std::string>("reason", ValueKind::text, Span{0, 0, "up to 400 letters"},
                                "reason", "Why this frame is as it is.", &FrameDecisions::reason),
    };
    floorField<std::string>(rows, "kind", ValueKind::choice, Span{0, 0, ""},
                            {"none", "sawn", "grown", "laminated", "cast", "plate"}, "floor",
                            "How the floor timber is made; none where a frame has no floor.",
                            &FloorDecisions::kind);
    floorField<std::string>(
        rows, "topology", ValueKind::choice, Span{0, 0, ""}, {"beside", "across", "plate"},
        "floor sits", "Beside the frame, across the heels, or a plate.", &FloorDecisions::topology);
    floorField<Length>(rows, "sided", ValueKind::length, timber, {}, "floor siding",
                       "Floor size fore and aft.", &FloorDecisions::sided);
    floorField<Length>(rows, "throat", ValueKind::length, timber, {}, "floor throat",
                       "Depth of the floor at the centreline, above the keel.",
                       &FloorDecisions::throat);
    floorField<Length>(rows, "reach", ValueKind::length, Span{0.02, 5, "20 mm to 5 m"}, {},
                       "floor reach", "From the centreline to the end of an arm, along the level.",
                       &FloorDecisions::reach);
    floorField<std::string>(rows, "wood", ValueKind::woodName,
                            Span{0, 0, "a wood of the catalogue"}, {}, "floor wood",
                            "Wood of the floor; the washers bear on it.", &FloorDecisions::wood);
    floorField<std::string>(rows, "reason", ValueKind::text, Span{0, 0, "up to 400 letters"}, {},
                            "reason", "Why this floor is as it is.", &FloorDecisions::reason);
    return rows;
}

}  // namespace fayline::table
