#pragma once

#include <string>

#include "sheet/profile.h"

/// What stands below the hull in a side profile.
namespace fayline::plan {

/// Names of bolts, signs of the worst margin at each frame, names of frames; the keyboard's stops.
class Rows {
  public:
    Rows(const ProfileInput& input, const DrawFormat& format, const DrawScale& scale, double topMm,
         double leftMm)
        : in_(input), format_(format), scale_(scale), top_mm_(topMm), left_mm_(leftMm) {}

    static std::string caption() { return "worst margin"; }
    /// Room the rows take.
    static double heightMm(const ProfileInput& input, const DrawFormat& format);
    void addTo(Drawing& drawing) const;

  private:
    void boltNames(Drawing& drawing) const;
    void frameSigns(Drawing& drawing) const;
    void frameNames(Drawing& drawing) const;
    void stops(Drawing& drawing) const;
    [[nodiscard]] double xOf(const ProfileFrame& frame) const;
    [[nodiscard]] double signsAtMm() const;
    [[nodiscard]] double captionAtMm() const;

    const ProfileInput& in_;
    const DrawFormat& format_;
    const DrawScale& scale_;
    double top_mm_, left_mm_;
};

/// The words for the signs that occur: in a column that ends at a place, or in a line that starts
/// there and goes as far as there is room up to rightMm.
void addLegendColumn(Drawing& drawing, const ProfileInput& input, const DrawFormat& format,
                     PointMm foot);
void addLegendLine(Drawing& drawing, const ProfileInput& input, const DrawFormat& format,
                   PointMm start, double rightMm);
double legendWidthMm(const ProfileInput& input, const DrawFormat& format);

}  // namespace fayline::plan
