#include <gtest/gtest.h>
#include <stdlib.h>

#include <array>
#include <clocale>
#include <cstdio>
#include <filesystem>
#include <locale>
#include <sstream>

#include "quantity/csv.h"
#include "quantity/printing.h"
#include "quantity/reading.h"

namespace fayline {
namespace {

/// Everything that turns numbers into text or back, in one text.
std::string everything() {
    std::string all;
    const auto length = readLength("1234.5 mm", "").value();
    all += exactText(length, LengthUnit::mm) + "|" + exactText(length, LengthUnit::in) + "|";
    all += exactText(readLength("1,5 in", "").value(), LengthUnit::mm) + "|";
    all += exactText(1234567.25) + "|" + exactText(1.5e-9) + "|";
    all += displayLength(length, LengthStyle::millimetres) + "|";
    all += displayLength(length, LengthStyle::feetInches) + "|";
    all += displayForce(newtons(1234.5), UnitSystem::millimetres) + "|";
    all += displayAngle(Angle::degrees(12.5)) + "|" + marginText(1234.5) + "|" + marginText(0.998);
    all += "|" + std::to_string(readCount("1234", "", 0, 9999).value()) + "|";
    all += readLength("1,234.5 mm", "").error().line() + "|" + csvLine({"-1.5", "1,5", "I"});
    return all;
}

class CommaDecimals : public std::numpunct<char> {
  protected:
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
};

TEST(Locale, StreamsWithCommasChangeNothing) {
    const std::string before = everything();
    const std::locale old = std::locale::global(std::locale(std::locale(), new CommaDecimals));
    std::ostringstream control;
    control << 1234.5;
    const std::string during = everything();
    std::locale::global(old);
    EXPECT_EQ(control.str(), "1.234,5") << "the locale did not take";
    EXPECT_EQ(during, before);
}

/// A C locale compiled for this test, as few machines have it installed.
class CLocale : public ::testing::TestWithParam<const char*> {
  protected:
    void SetUp() override {
        std::string pattern = ::testing::TempDir() + "/localesXXXXXX";
        ASSERT_NE(mkdtemp(pattern.data()), nullptr);
        directory_ = pattern;
        const std::string name = GetParam();
        const std::string command = "localedef -i " + name + " -f UTF-8 '" + directory_ + "/" +
                                    name + ".UTF-8' >/dev/null 2>&1";
        if (std::system(command.c_str()) != 0) {
            GTEST_SKIP() << name << " cannot be made; the Debian package is locales";
        }
        setenv("LOCPATH", directory_.c_str(), 1);
        ASSERT_NE(std::setlocale(LC_ALL, (name + ".UTF-8").c_str()), nullptr);
    }
    void TearDown() override {
        std::setlocale(LC_ALL, "C");
        unsetenv("LOCPATH");
        std::filesystem::remove_all(directory_);
    }

  private:
    std::string directory_;
};

TEST_P(CLocale, ChangesNothing) {
    std::array<char, 16> control{};
    std::snprintf(control.data(), control.size(), "%.1f", 1.5);
    const std::string during = everything();
    std::setlocale(LC_ALL, "C");
    EXPECT_STREQ(control.data(), "1,5") << "the locale did not take";
    EXPECT_EQ(during, everything());
}

INSTANTIATE_TEST_SUITE_P(CommaCountries, CLocale, ::testing::Values("de_DE", "tr_TR"),
                         [](const auto& parameter) { return std::string(parameter.param); });

}  // namespace
}  // namespace fayline
