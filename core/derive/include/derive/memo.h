#pragma once

#include <memory>
#include <unordered_map>
#include <utility>

namespace fayline {

/// Remembers the result of a pure function by the value of its input, one entry per key. An equal
/// input gives the old pointer back; anything else runs the function again. Keys not asked for in
/// two generations are forgotten.
template <typename Key, typename Input, typename Output>
class Memo {
  public:
    /// `runs` counts up when the function really runs.
    template <typename Function>
    std::shared_ptr<const Output> get(const Key& key, Input input, Function function, int& runs) {
        auto found = entries_.find(key);
        if (found != entries_.end() && found->second.input == input) {
            found->second.generation = generation_;
            return found->second.output;
        }
        ++runs;
        auto output = std::make_shared<const Output>(function(input));
        entries_.insert_or_assign(key, Entry{std::move(input), output, generation_});
        return output;
    }

    void nextGeneration() {
        std::erase_if(entries_, [this](const auto& entry) {
            return entry.second.generation + 1 < generation_;
        });
        ++generation_;
    }

  private:
    struct Entry {
        Input input;
        std::shared_ptr<const Output> output;
        long generation;
    };
    std::unordered_map<Key, Entry> entries_;
    long generation_ = 0;
};

}  // namespace fayline
