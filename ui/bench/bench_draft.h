#pragma once

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "derive/record.h"

namespace fayline {

/// A joint as it stands in the fields: the texts of a joint file, by key. What is not given has no
/// key.
struct BenchDraft {
    using Texts = std::map<std::string, std::string>;
    std::vector<Texts> members;  ///< "wood", "thickness" …
    Texts rest;                  ///< "fastener.kind", "hole.bung", "load.lateral" …
    std::string group;           ///< a file's group of fastenings, as JSON; only kept
    bool operator==(const BenchDraft&) const = default;

    /// The text at "members[0].wood" or "fastener.kind"; empty when not given.
    [[nodiscard]] std::string at(const std::string& path) const;
    /// An empty text takes the key away.
    void set(const std::string& path, const std::string& text);
};

/// The joint a panel begins with: a cedar plank on an oak frame.
BenchDraft firstDraft();

/// A joint file of what stands in the fields, in the order its keys are told in, with units and
/// basis of the screen.
std::string jointFileText(const BenchDraft& draft, UnitSystem units, Basis basis);

/// The texts of a joint file; values that are no text, number or yes and no are left out. The file
/// is to be read by its own reader first.
BenchDraft draftOf(const std::string& jointFile);

/// A worked joint's figures as texts that read back as the same values, lengths in these units.
BenchDraft draftOf(const NamedJoint& named);

}  // namespace fayline
