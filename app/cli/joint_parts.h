#pragma once

#include "joint_file.h"
#include "joint_object.h"

namespace fayline::cli {

inline constexpr const char* jointFileFigure = "given in the joint file";

/// members[index] of the file.
void readJointMember(const Json& json, const std::string& path, const Catalogue& catalogue,
                     JointFile& file, Problems& problems);
/// fastener and hole of the file.
void readJointFastener(const Json& json, const Catalogue& catalogue, JointFile& file,
                       Problems& problems);
void readJointHole(const Json& json, JointFile& file, Problems& problems);

/// The ids of a catalogue map.
template <typename Map>
std::vector<std::string> idsOf(const Map& map) {
    std::vector<std::string> ids;
    for (const auto& [id, value] : map) ids.push_back(id);
    return ids;
}

template <typename T, typename V>
void putFigure(std::optional<Figure<T>>& slot, const std::optional<V>& given) {
    if (given) slot = Figure<T>{T{*given}, Standing::judgement, jointFileFigure};
}

}  // namespace fayline::cli
