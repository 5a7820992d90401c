#include <QFile>
#include <QFileInfo>
#include <set>

#include "desk/desk.h"
#include "hull/offsets.h"

namespace fayline {
namespace {

constexpr qint64 mostBytes = 4'000'000;

std::string pointName(const std::string& station, std::size_t index, const char* field) {
    return "offsets." + station + "." + std::to_string(index) + "." + field;
}

void decideAll(const Offsets& offsets, Typed& typed) {
    if (offsets.waterline) typed.emplace_back("hull.waterline", offsets.waterlineText);
    for (const OffsetStation& station : offsets.stations) {
        typed.emplace_back("offsets." + station.id + ".x", station.xText);
        if (station.rabbet)
            typed.emplace_back("offsets." + station.id + ".rabbet",
                               std::to_string(*station.rabbet));
        for (std::size_t i = 0; i < station.points.size(); ++i) {
            typed.emplace_back(pointName(station.id, i + 1, "half_breadth"),
                               station.points[i].halfBreadthText);
            typed.emplace_back(pointName(station.id, i + 1, "height"),
                               station.points[i].heightText);
        }
    }
}

void dropOthers(const Project& present, Typed& typed) {
    std::set<std::string> kept;
    for (const auto& [what, text] : typed) kept.insert(what);
    const auto drop = [&](const std::string& what, bool decided) {
        if (decided && kept.count(what) == 0) typed.emplace_back(what, "");
    };
    for (const auto& [id, station] : present.offsets) {
        drop("offsets." + id + ".x", station.x.has_value());
        drop("offsets." + id + ".rabbet", station.rabbet.has_value());
        for (const auto& [index, point] : station.points) {
            const auto number = static_cast<std::size_t>(index);
            drop(pointName(id, number, "half_breadth"), point.halfBreadth.has_value());
            drop(pointName(id, number, "height"), point.height.has_value());
        }
    }
}

}  // namespace

ResultAll<Typed> offsetDecisions(const QString& file, const Project& present) {
    QFile source(file);
    const std::string name = QFileInfo(file).fileName().toStdString();
    if (!source.open(QIODevice::ReadOnly)) {
        return tl::unexpected(
            Problems{{"file.io", name, "cannot be read: " + source.errorString().toStdString(),
                      "a table of offsets"}});
    }
    if (source.size() > mostBytes) {
        return tl::unexpected(
            Problems{{"file.size", name, "is larger than any table of offsets", "at most 4 MB"}});
    }
    const auto offsets = readOffsets(source.readAll().toStdString(), name);
    if (!offsets) return tl::unexpected(offsets.error());
    Typed typed;
    decideAll(*offsets, typed);
    dropOthers(present, typed);
    return typed;
}

}  // namespace fayline
