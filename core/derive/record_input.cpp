// What a joint is made of, figure by figure, for the record of one joint and of a hull.

#include <algorithm>

#include "joint/screw.h"
#include "record_joint.h"
#include "record_values.h"
#include "sheet/joint_picture.h"

namespace fayline {
namespace {

using namespace record_values;
using Rows = std::vector<std::vector<std::string>>;

std::string named(const std::optional<std::string>& id, const char* otherwise) {
    if (!id) return otherwise;
    std::string text = *id;
    std::replace(text.begin(), text.end(), '_', ' ');
    return text;
}

std::string plainName(std::string_view name) {
    std::string text(name);
    std::replace(text.begin(), text.end(), '_', ' ');
    return text;
}

const std::vector<std::string> inputHeads{"", "figure", "or", "standing", "from"};

struct Inputs {
    UnitSystem units;
    Rows rows{};

    template <typename T>
    void figure(const std::string& what, const std::optional<Figure<T>>& given) {
        if (given) value(what, given->value, given->source, given->standing);
    }
    void value(const std::string& what, Stress value, const std::string& source,
               std::optional<Standing> stands) {
        rows.push_back(inputRow(what, value, source, stands, units));
    }
    void value(const std::string& what, Length value, const std::string& source,
               std::optional<Standing> stands) {
        rows.push_back(inputRow(what, value, source, stands, units));
    }
    void value(const std::string& what, const SpecificGravityOvenDry& g, const std::string& source,
               std::optional<Standing> stands) {
        rows.push_back(inputRow(what, g.value, source, stands, units));
    }
    void value(const std::string& what, const SpecificGravityTwelve& g, const std::string& source,
               std::optional<Standing> stands) {
        rows.push_back(inputRow(what, g.value, source, stands, units));
    }
    void value(const std::string& what, const CharacteristicDensity& d, const std::string& source,
               std::optional<Standing> stands) {
        rows.push_back(inputRow(what, d.value, source, stands, units));
    }
    void length(const std::string& what, Length value, const std::string& source = "given") {
        if (value.si() > 0.0) rows.push_back(inputRow(what, value, source, std::nullopt, units));
    }
    void words(const std::string& what, const std::string& says) {
        rows.push_back({what, says, "", "", "given"});
    }
};

void memberRows(Inputs& in, const JointMember& m, const std::optional<std::string>& wood) {
    const std::string name = m.name + ": ";
    in.words(name + "wood", named(wood, "as given") + ", " + std::string(woodFamilyText(m.family)));
    in.length(name + "thickness", m.thickness);
    in.length(name + "counterbore", m.counterbore);
    in.length(name + "gap behind it", m.gap);
    in.rows.push_back({name + "load to grain", displayAngle(m.grain), "", "", "given"});
    if (m.endGrain) in.words(name + "fastening", "in end grain");
    in.figure(name + "G, oven-dry", m.gravity);
    in.figure(name + "G, volume at 12 %", m.gravityTwelve);
    in.figure(name + "ρ_k", m.density);
    in.figure(name + "bearing, US", m.bearingUs);
    in.figure(name + "embedment, Eurocode 5", m.embedmentEc5);
    in.figure(name + "across the grain, US allowable", m.acrossUs);
    in.figure(name + "across the grain, characteristic", m.acrossEc5);
    in.figure(name + "across the grain, mean, wet", m.acrossMean);
    in.figure(name + "tension along the grain, US", m.tensionUs);
    in.figure(name + "shear along the grain, US", m.shearUs);
    in.figure(name + "tension along the grain, characteristic", m.tensionEc5);
    in.figure(name + "bearing of lead", m.lead);
    if (m.width) in.length(name + "width", *m.width);
    if (m.grainSlope)
        in.rows.push_back(
            {name + "slope of grain", "1 in " + digits(*m.grainSlope, 3), "", "", "given"});
}

void bearingRow(Inputs& in, const char* what, const std::optional<EndBearing>& bearing) {
    if (!bearing) return;
    in.length(std::string(what) + ": diameter", bearing->diameter);
    in.length(std::string(what) + ": thickness", bearing->thickness);
}

void fastenerRows(Inputs& in, const NamedJoint& joint) {
    const JointFastener& f = joint.joint.fastener;
    in.words("kind",
             plainName(nameOf(f.kind)) + (f.section == DowelSection::square ? ", square" : ""));
    in.words("ends", plainName(nameOf(f.head)) + ", " + plainName(nameOf(f.point)));
    if (f.kind == FastenerKind::woodScrew) {
        const ScrewShape shape = screwShape(f);
        if (f.gauge) in.words("gauge", "No. " + std::to_string(f.gauge->number()));
        const std::pair<const char*, const SourcedLength*> sizes[] = {{"body", &shape.body},
                                                                      {"root", &shape.root},
                                                                      {"thread", &shape.thread},
                                                                      {"tip", &shape.tip},
                                                                      {"head", &shape.head}};
        for (const auto& [what, size] : sizes)
            in.value(what, size->value, std::string(size->source), size->standing);
    } else {
        in.length(f.section == DowelSection::square ? "side" : "diameter", f.diameter);
        if (joint.thread) in.words("thread", named(joint.thread, ""));
        if (f.root) in.length("root", *f.root);
        if (f.headDiameter) in.length("head, diameter", *f.headDiameter);
    }
    in.length("length", f.length);
    if (f.headHeight) in.length("head, height", *f.headHeight);
    bearingRow(in, "under the head", f.headBearing);
    bearingRow(in, "under the point's end", f.pointBearing);
    if (f.hole) in.length("hole in the wood", *f.hole);
    const std::pair<const char*, const std::optional<Length>*> bits[] = {
        {"slip fit", &f.screwHole.slipFit},
        {"pilot", &f.screwHole.pilot},
        {"pilot at its point", &f.screwHole.pilotTip},
        {"bit, length", &f.screwHole.bit},
        {"collar", &f.screwHole.collar},
        {"pitch", &f.pitch},
        {"nut, height", &f.nutHeight},
        {"peened end, height", &f.peenHeight}};
    for (const auto& [what, length] : bits) {
        if (*length) in.length(what, **length);
    }
    if (f.slant) in.rows.push_back({"slant", displayAngle(*f.slant), "", "", "given"});
    if (f.yieldMoment)
        in.rows.push_back(inputRow("yield moment", f.yieldMoment->value, f.yieldMoment->source,
                                   f.yieldMoment->standing, in.units));
    in.figure("nut, shear", f.nutShear);
    if (f.bung) in.length("plug", *f.bung);
    in.length("corrosion off the radius", f.corrosion);
    in.words("metal", named(joint.metal, "as given"));
    const FastenerMetal& metal = f.metal;
    in.figure("yield, least", metal.yield);
    in.figure("ultimate, least", metal.ultimate);
    in.figure("yield, typical", metal.yieldTypical);
    in.figure("ultimate, typical", metal.ultimateTypical);
    in.figure("shear, ultimate", metal.shear);
    in.figure("bending yield", metal.bendingYield);
    in.rows.push_back({"factor on metal", digits(metal.factor, 4), "", "", metal.factorSource});
}

void useRows(Inputs& in, const Joint& joint) {
    in.words("service", joint.service == Service::dry ? "dry" : "wet");
    in.words("fastened when", joint.fitted == Fitted::dry ? "dry" : "wet");
    in.words("duration", std::string(nameOf(joint.duration)));
    in.words("kind of load", std::string(nameOf(joint.kindOfLoad)));
    if (joint.row) {
        in.words("in a row", std::to_string(joint.row->count));
        in.length("spacing in the row", joint.row->spacing);
    }
    if (joint.placement) {
        if (joint.placement->end) in.length("to the end", *joint.placement->end);
        if (joint.placement->spacing) in.length("to the next", *joint.placement->spacing);
        if (joint.placement->edge) in.length("to the edge", *joint.placement->edge);
    }
    if (joint.group) {
        for (std::size_t i = 0; i < joint.group->places.size(); ++i) {
            const GroupPlace& place = joint.group->places[i];
            in.rows.push_back({"group, fastening " + std::to_string(i + 1),
                               show(TraceValue(place.along), in.units) + " along, " +
                                   show(TraceValue(place.across), in.units) + " across",
                               "", "", "given"});
        }
    }
    if (joint.heel) in.words("a frame's heel", "yes");
    if (joint.load) {
        in.rows.push_back(
            inputRow("load sideways", joint.load->lateral, "given", std::nullopt, in.units));
        in.rows.push_back(
            inputRow("load along it", joint.load->axial, "given", std::nullopt, in.units));
    }
}

}  // namespace

std::string fastenerWords(const NamedJoint& joint) {
    const JointFastener& f = joint.joint.fastener;
    std::string text =
        f.gauge ? "No. " + std::to_string(f.gauge->number()) : size(f.diameter, joint.units);
    if (f.section == DowelSection::square) text += " square";
    text += " " + plainName(nameOf(f.kind));
    if (f.length.si() > 0.0 && (f.kind == FastenerKind::woodScrew || f.kind == FastenerKind::drift))
        text += " " + size(f.length, joint.units);
    return text + ", " + named(joint.metal, "metal as given");
}

void addJointInput(std::vector<record::Block>& blocks, const NamedJoint& joint) {
    blocks.emplace_back(
        record::Picture{jointDrawing(joint.joint, {{recordWidth_mm, 46.0}, 2.1, joint.units}), ""});
    Inputs in{joint.units};
    for (std::size_t i = 0; i < joint.joint.members.size(); ++i)
        memberRows(in, joint.joint.members[i],
                   i < joint.woods.size() ? joint.woods[i] : std::nullopt);
    fastenerRows(in, joint);
    useRows(in, joint.joint);
    blocks.emplace_back(record::Table{inputHeads, std::move(in.rows), {}});
}

}  // namespace fayline
