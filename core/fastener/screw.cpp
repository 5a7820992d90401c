#include "fastener/screw.h"

#include <array>

namespace fayline {
namespace {

struct Measured {
    int gauge;
    double root_in;
};
constexpr std::array<Measured, 8> measured{{{4, 0.075},
                                            {6, 0.094},
                                            {8, 0.112},
                                            {10, 0.130},
                                            {12, 0.148},
                                            {16, 0.184},
                                            {18, 0.204},
                                            {20, 0.223}}};

double ratioAt(const Measured& m) {
    return m.root_in / inInches(screwBody(Gauge(m.gauge)));
}

}  // namespace

Length screwBody(Gauge gauge) {
    return inches(0.060 + 0.013 * gauge.number());
}

Length screwRoot(Gauge gauge) {
    const int n = gauge.number();
    if (n <= measured.front().gauge) return ratioAt(measured.front()) * screwBody(gauge);
    for (std::size_t i = 1; i < measured.size(); ++i) {
        const Measured& a = measured[i - 1];
        const Measured& b = measured[i];
        if (n > b.gauge) continue;
        const double t = static_cast<double>(n - a.gauge) / (b.gauge - a.gauge);
        return inches(a.root_in + t * (b.root_in - a.root_in));
    }
    return ratioAt(measured.back()) * screwBody(gauge);
}

Length screwHead(Gauge gauge) {
    return 2.0 * screwBody(gauge);
}

}  // namespace fayline
