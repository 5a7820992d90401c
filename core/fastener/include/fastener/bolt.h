#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "fastener/thread.h"
#include "material/standing.h"
#include "quantity/quantity.h"

namespace fayline {

/// Round rod as bought, to be threaded at both ends.
struct RodStock {
    std::string id;  ///< "c65500_h02_3_4"
    std::string name;
    std::string metal;   ///< id of a Metal
    std::string thread;  ///< id of a Thread
    Length diameter;
    std::optional<Length> stockLength;  ///< usual length of a bar
    Standing standing = Standing::judgement;
    std::string source;

    bool operator==(const RodStock&) const = default;
};

enum class NutKind { hex, heavyHex, jam };

/// "hex", "heavy_hex", "jam".
std::string_view nutKindText(NutKind kind);
std::optional<NutKind> nutKindFromText(std::string_view text);

struct Nut {
    std::string id;  ///< "hex_1_2"
    std::string name;
    NutKind kind = NutKind::hex;
    std::string thread;  ///< id of a Thread
    Length acrossFlats;
    Length height;
    Standing standing = Standing::judgement;
    std::string source;

    bool operator==(const Nut&) const = default;
};

struct Washer {
    std::string id;  ///< "wide_1_2"
    std::string name;
    Length fits;  ///< nominal diameter of the bolt
    Length inside;
    Length outside;
    Length thickness;
    Standing standing = Standing::judgement;
    std::string source;

    bool operator==(const Washer&) const = default;
};

/// The ring of wood a washer presses on: outside less the larger of its own hole and the wood's.
Area bearingArea(const Washer& washer, Length woodHole);

/// A square or round plate washer of free size is a Washer too; this is its equal for round ones.
Washer plateWasher(Length fits, Length inside, Length outside, Length thickness);

/// Cut length of a rod with a nut and washer at both ends: grip, two washers, two nuts, one and a
/// half turns standing proud at each end (common practice), and thread left to take up shrinkage.
Length rodLength(const Thread& thread, const Nut& nut, const Washer& washer, Length grip,
                 Length takeUp);

/// Least length of thread at each end: washer, nut, one and a half turns, and the take-up at the
/// end that is tightened.
Length threadLength(const Thread& thread, const Nut& nut, const Washer& washer, Length takeUp);

}  // namespace fayline
