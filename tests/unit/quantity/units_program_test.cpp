#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstdio>

#include "by_kind.h"

namespace fayline {
namespace {

struct Conversion {
    const char* kind;
    const char* text;
    const char* theirs;  ///< the same in the language of GNU units
    const char* si;
};

// A second opinion on the factors, from the tables that come with GNU units.
constexpr std::array conversions{
    Conversion{"length", "7 mm", "7 mm", "m"},
    Conversion{"length", "7 cm", "7 cm", "m"},
    Conversion{"length", "40 5/8 in", "(40 + 5|8) inch", "m"},
    Conversion{"length", "3' 4 5/8\"", "3 ft + (4 + 5|8) inch", "m"},
    Conversion{"length", "3-4-5+", "3 ft + (4 + 11|16) inch", "m"},
    Conversion{"length", "5.3 ft", "5.3 ft", "m"},
    Conversion{"area", "7 mm2", "7 mm^2", "m^2"},
    Conversion{"area", "7 cm2", "7 cm^2", "m^2"},
    Conversion{"area", "7 in2", "7 inch^2", "m^2"},
    Conversion{"area", "7 ft2", "7 ft^2", "m^2"},
    Conversion{"mass", "7 g", "7 g", "kg"},
    Conversion{"mass", "250 lb", "250 lb", "kg"},
    Conversion{"mass", "1.7 t", "1.7 tonne", "kg"},
    Conversion{"force", "250 lb", "250 lbf", "N"},
    Conversion{"force", "250 lbf", "250 lb gravity", "N"},
    Conversion{"force", "120 kgf", "120 kgf", "N"},
    Conversion{"force", "12.5 kN", "12.5 kN", "N"},
    Conversion{"stress", "45 ksi", "45 ksi", "Pa"},
    Conversion{"stress", "1200 psi", "1200 psi", "Pa"},
    Conversion{"stress", "1200 lbf/in2", "1200 lbf/inch^2", "Pa"},
    Conversion{"stress", "310 MPa", "310 MPa", "Pa"},
    Conversion{"stress", "310 N/mm2", "310 N/mm^2", "Pa"},
    Conversion{"stress", "12 GPa", "12 GPa", "Pa"},
    Conversion{"stress", "25 kN/m2", "25 kN/m^2", "Pa"},
    Conversion{"density", "560 kg/m3", "560 kg/m^3", "kg/m^3"},
    Conversion{"density", "0.56 g/cm3", "0.56 g/cm^3", "kg/m^3"},
    Conversion{"density", "35 lb/ft3", "35 lb/ft^3", "kg/m^3"},
    Conversion{"density", "0.3 lb/in3", "0.3 lb/inch^3", "kg/m^3"},
    Conversion{"density", "1.025 t/m3", "1.025 tonne/m^3", "kg/m^3"},
};

std::string outputOf(const std::string& command) {
    std::string output;
    FILE* pipe = popen(command.c_str(), "r");
    if (pipe == nullptr) return output;
    std::array<char, 256> buffer{};
    while (fgets(buffer.data(), static_cast<int>(buffer.size()), pipe) != nullptr) {
        output += buffer.data();
    }
    return pclose(pipe) == 0 ? output : "";
}

TEST(UnitsProgram, AgreesOnEveryFactor) {
    ASSERT_NE(outputOf("LC_ALL=C units --version 2>&1"), "") << "GNU units is not installed";
    for (const auto& conversion : conversions) {
        const std::string answer = outputOf(std::string("LC_ALL=C units -t -o %.17g '") +
                                            conversion.theirs + "' '" + conversion.si + "' 2>&1");
        ASSERT_NE(answer, "") << conversion.theirs;
        const double theirs = std::stod(answer);
        const auto ours = readByKind(conversion.kind, conversion.text, "");
        ASSERT_TRUE(ours && *ours) << conversion.text;
        // Theirs is a chain of roundings, each at most half a unit in the last place.
        EXPECT_NEAR(**ours / theirs, 1.0, 2e-15) << conversion.text << ": " << answer;
    }
}

}  // namespace
}  // namespace fayline
