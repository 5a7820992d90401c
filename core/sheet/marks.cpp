#include "sheet/marks.h"

namespace fayline {

std::vector<DrawItem> statusMark(Status status, PointMm at, SizeMm size, const std::string& id) {
    using shape::Mark;
    using shape::MarkKind;
    const double across_mm = size.width;
    const Stroke edge{across_mm * 0.14, LineStyle::solid};
    const Role role = statusRole(status);
    switch (status) {
        case Status::isShort:
            return {{role, id, Mark{at, MarkKind::square, across_mm, true, {0.0}}},
                    {Role::paper, id, Mark{at, MarkKind::cross, across_mm * 0.56, false, edge}}};
        case Status::near:
            return {{role, id, Mark{at, MarkKind::triangle, across_mm * 0.94, false, edge}}};
        case Status::unknown: {
            shape::Text sign;
            sign.anchor = at;
            sign.text = "?";
            sign.letterMm = across_mm;
            sign.weight = shape::Weight::bold;
            sign.across = shape::Across::centre;
            sign.upright = shape::Upright::middle;
            return {{role, id, sign}};
        }
        case Status::outside:
            return {{role, id, Mark{at, MarkKind::diamond, across_mm, false, edge}}};
        case Status::ok:
            return {{role, id, Mark{at, MarkKind::circle, across_mm * 0.42, true, {0.0}}}};
        case Status::unloaded: {
            const double half_mm = across_mm * 0.3;
            return {{role, id, shape::Line{{at.x - half_mm, at.y}, {at.x + half_mm, at.y}, edge}}};
        }
    }
    return {};
}

Role statusRole(Status status) {
    switch (status) {
        case Status::isShort:
            return Role::statusShort;
        case Status::near:
            return Role::statusNear;
        case Status::unknown:
            return Role::statusUnknown;
        case Status::outside:
            return Role::statusOutside;
        case Status::ok:
            return Role::statusOk;
        case Status::unloaded:
            return Role::statusUnloaded;
    }
    return Role::statusUnknown;
}

Role boltRole(Status status) {
    switch (status) {
        case Status::isShort:
            return Role::boltShort;
        case Status::near:
            return Role::boltNear;
        case Status::unknown:
        case Status::outside:
            return Role::boltUnknown;
        case Status::ok:
        case Status::unloaded:
            return Role::bolt;
    }
    return Role::bolt;
}

}  // namespace fayline
