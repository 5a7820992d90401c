#include "example.h"

#include <cmath>
#include <fstream>
#include <sstream>

#include "hull/offsets.h"
#include "hull/surface.h"

namespace fayline::example {

namespace {

LoftedSurface surface() {
    std::ifstream file(FAYLINE_SOURCE_DIR "/resources/demo/hollin-offsets.csv");
    std::stringstream text;
    text << file.rdbuf();
    return loft(readOffsets(text.str(), "hollin-offsets.csv").value()).value();
}

Point at(double x_mm, double z_mm, double y_mm = 0.0) {
    return {millimetres(x_mm), millimetres(y_mm), millimetres(z_mm)};
}

/// Lower face of the keel timber, straight from 715 mm at its fore end to 510 mm at its after end.
double joint_mm(double x_mm) {
    return 715.0 + (x_mm - 2350.0) / (7450.0 - 2350.0) * (510.0 - 715.0);
}

double ballastDepth_mm(double x_mm) {
    const double t = (x_mm - 3400.0) / 3200.0;
    return 410.0 * (1 - t) * (1 - 2 * t) + 570.0 * 4 * t * (1 - t) + 520.0 * t * (2 * t - 1);
}

constexpr double keelMoulded_mm = 150.0;

}  // namespace

ProfileInput profileWithFrames(int count) {
    const LoftedSurface hull = surface();
    ProfileInput in;
    in.sheer = hull.sheerLine();
    in.lowest = hull.profileLine();
    in.waterline = millimetres(1480.0);
    in.keel = {at(2350, joint_mm(2350) + keelMoulded_mm), at(7450, joint_mm(7450) + keelMoulded_mm),
               at(7450, joint_mm(7450)), at(2350, joint_mm(2350))};
    for (int i = 0; i <= 20; ++i) {
        const double x_mm = 3400.0 + 160.0 * i;
        in.ballast.push_back(at(x_mm, joint_mm(x_mm) - ballastDepth_mm(x_mm)));
    }
    in.ballast.push_back(at(6600, joint_mm(6600)));
    in.ballast.push_back(at(3400, joint_mm(3400)));

    const double spacing_mm = 36.0 * 230.0 / (count - 1);
    for (int i = 0; i < count; ++i) {
        const double x_mm = 770.0 + spacing_mm * i;
        ProfileFrame frame;
        frame.id = "F" + std::to_string(i + 1);
        frame.x = millimetres(x_mm);
        frame.sided = millimetres(44.0);
        frame.worst = Status::ok;
        if (x_mm > 3700.0 && x_mm < 6350.0) {
            frame.hasFloor = true;
            frame.floorTop = millimetres(joint_mm(x_mm) + keelMoulded_mm + 180.0);
            frame.floorSided = millimetres(75.0);
        } else if (i < 4 || i > count - 5) {
            frame.worst = Status::unloaded;
        }
        in.frames.push_back(frame);
    }
    const auto frame = [&](int number) -> ProfileFrame& {
        return in.frames.at(static_cast<std::size_t>(number - 1));
    };
    frame(19).worst = Status::isShort;
    frame(16).worst = Status::near;
    frame(12).worst = Status::unknown;
    frame(20).worst = Status::outside;
    for (int i = 1; i <= 9; ++i) {
        const double x_mm = 3760.0 + (i - 1) * 2.0 * 150.0;
        ProfileBolt bolt;
        bolt.id = "K." + std::to_string(i);
        bolt.start = at(x_mm, joint_mm(x_mm) + keelMoulded_mm + 180.0);
        bolt.end = at(x_mm, joint_mm(x_mm) - ballastDepth_mm(x_mm) + 80.0);
        bolt.status = i == 6 ? Status::isShort : i == 4 ? Status::near : Status::ok;
        bolt.diameter = inches(i == 6 ? 0.625 : 0.875);
        in.bolts.push_back(bolt);
    }
    return in;
}

ProfileInput profile() {
    return profileWithFrames(37);
}

SectionInput section() {
    const LoftedSurface hull = surface();
    const double x_mm = 770.0 + 18 * 230.0;
    SectionInput in;
    in.frame = "F19";
    in.side = hull.sectionAt(millimetres(x_mm)).points;
    in.waterline = millimetres(1480.0);
    in.planking = millimetres(28.0);
    in.moulded = millimetres(64.0);
    const double joint = joint_mm(x_mm);
    const double bottom = joint - ballastDepth_mm(x_mm);
    in.keel = {{millimetres(105), millimetres(joint + keelMoulded_mm)},
               {millimetres(105), millimetres(joint)}};
    in.ballast = {{millimetres(105), millimetres(joint)}, {millimetres(60), millimetres(bottom)}};
    in.floorTop = millimetres(joint + keelMoulded_mm + 180.0);
    for (const auto& [id, y_mm, status] :
         {std::tuple{"K.6", 30.0, Status::isShort}, {"K.5", -30.0, Status::ok}}) {
        SectionBolt bolt;
        bolt.id = id;
        bolt.start = at(x_mm, joint + keelMoulded_mm + 180.0, y_mm);
        bolt.end = at(x_mm, bottom + 80.0, y_mm);
        bolt.diameter = inches(status == Status::isShort ? 0.625 : 0.875);
        bolt.washer = millimetres(90.0);
        bolt.status = status;
        in.bolts.push_back(bolt);
    }
    return in;
}

}  // namespace fayline::example
