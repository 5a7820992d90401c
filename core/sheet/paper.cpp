#include "sheet/paper.h"

#include <array>
#include <cstdint>
#include <utility>

namespace fayline {
namespace {

constexpr std::array<std::pair<PaperSize, std::string_view>, 2> papers{{
    {PaperSize::a4, "a4"},
    {PaperSize::letter, "letter"},
}};

constexpr std::string_view codeLetters = "23456789ABCDEFGHJKMNPQRSTVWXYZ";

}  // namespace

std::string_view nameOf(PaperSize paper) {
    for (const auto& [value, name] : papers) {
        if (value == paper) return name;
    }
    return "";
}

std::optional<PaperSize> paperNamed(std::string_view name) {
    for (const auto& [value, known] : papers) {
        if (known == name) return value;
    }
    return std::nullopt;
}

SizeMm sizeOf(PaperSize paper) {
    return paper == PaperSize::a4 ? SizeMm{210.0, 297.0} : SizeMm{215.9, 279.4};
}

std::string_view nameOf(SheetKind kind) {
    switch (kind) {
        case SheetKind::frame:
            return "frame";
        case SheetKind::floor:
            return "floor";
        case SheetKind::keel:
            return "keel";
        case SheetKind::planks:
            return "planks";
        case SheetKind::backbone:
            return "backbone";
        case SheetKind::record:
            return "record";
    }
    return "";
}

std::string revisionCode(std::string_view hexHash) {
    std::uint64_t number = 0;
    for (const char digit : hexHash.substr(0, 16)) {
        const int value = digit <= '9' ? digit - '0' : digit - 'a' + 10;
        number = number * 16 + static_cast<std::uint64_t>(value);
    }
    std::string code;
    for (int i = 0; i < 8; ++i) {
        code += codeLetters[number % codeLetters.size()];
        number /= codeLetters.size();
    }
    return code;
}

std::string revisionText(std::string_view code) {
    return std::string(code);
}

}  // namespace fayline
