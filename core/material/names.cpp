#include <array>
#include <utility>

#include "material/metal.h"
#include "material/wood.h"

namespace fayline {
namespace {

template <typename E, std::size_t N>
using Words = std::array<std::pair<E, std::string_view>, N>;

constexpr Words<WoodFamily, 2> woodFamilies{{
    {WoodFamily::softwood, "softwood"},
    {WoodFamily::hardwood, "hardwood"},
}};
constexpr Words<WoodMoisture, 2> moistures{{
    {WoodMoisture::green, "green"},
    {WoodMoisture::twelve, "12 %"},
}};
constexpr Words<MetalFamily, 7> metalFamilies{{
    {MetalFamily::bronze, "bronze"},
    {MetalFamily::copper, "copper"},
    {MetalFamily::nickel, "nickel"},
    {MetalFamily::steel, "steel"},
    {MetalFamily::stainless, "stainless"},
    {MetalFamily::iron, "iron"},
    {MetalFamily::lead, "lead"},
}};

template <typename E, std::size_t N>
std::string_view wordOf(const Words<E, N>& words, E value) {
    for (const auto& [one, word] : words) {
        if (one == value) return word;
    }
    return {};
}

template <typename E, std::size_t N>
std::optional<E> valueOf(const Words<E, N>& words, std::string_view text) {
    for (const auto& [one, word] : words) {
        if (word == text) return one;
    }
    return std::nullopt;
}

}  // namespace

std::string_view woodFamilyText(WoodFamily family) {
    return wordOf(woodFamilies, family);
}
std::optional<WoodFamily> woodFamilyFromText(std::string_view text) {
    return valueOf(woodFamilies, text);
}
std::string_view woodMoistureText(WoodMoisture moisture) {
    return wordOf(moistures, moisture);
}
std::optional<WoodMoisture> woodMoistureFromText(std::string_view text) {
    return valueOf(moistures, text);
}
std::string_view metalFamilyText(MetalFamily family) {
    return wordOf(metalFamilies, family);
}
std::optional<MetalFamily> metalFamilyFromText(std::string_view text) {
    return valueOf(metalFamilies, text);
}

}  // namespace fayline
