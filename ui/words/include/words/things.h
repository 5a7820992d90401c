#pragma once

#include <QString>
#include <string>

#include "check/check.h"

namespace fayline {

/// A group of fastenings in plain words: "Heel", "Arms", "Floor to keel", "Planks" …
QString groupWords(const std::string& group);

/// What an id stands for: "Ballast bolt K.5", "Heel 2 at F9, port", "Plank fastening 1 in strake 4
/// at F9, port", "Floor timber at F9", "Keel timber on the ballast". An id of no known form as it
/// is.
QString thingTitle(const std::string& id);
/// The same where its joint is named already: "port, fastening 1", "starboard, strake 4".
QString thingWithin(const std::string& id);
/// The same for narrow places, where its frame is known already: "K.5", "heel P2", "plank P4.1",
/// "floor".
QString thingShort(const std::string& id);

/// "wood screw", "bolt", "drift", "rivet"; other words with their underscores gone.
QString kindWords(const std::string& kind);

}  // namespace fayline
