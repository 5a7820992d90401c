#include "bench_draft.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

#include "quantity/printing.h"
#include "quantity/reading.h"
#include "words/values.h"

namespace fayline {
namespace {

/// "members[2].wood" as 2 and "wood"; no member: nothing.
std::optional<std::pair<std::size_t, std::string>> memberPath(const std::string& path) {
    constexpr std::string_view front = "members[";
    if (path.rfind(front, 0) != 0) return std::nullopt;
    const auto end = path.find("].");
    if (end == std::string::npos) return std::nullopt;
    const std::string number = path.substr(front.size(), end - front.size());
    return std::pair{static_cast<std::size_t>(std::stoul(number)), path.substr(end + 2)};
}

bool isYesNo(const std::string& key) {
    return key == "end_grain" || key == "heel" || key == "fastener.thread_bears" ||
           key == "placement.edge_loaded_across";
}

std::string quoted(const std::string& text) {
    // Qt's own writer knows every rule of escaping.
    const QByteArray list =
        QJsonDocument(QJsonArray{QJsonValue(asText(text))}).toJson(QJsonDocument::Compact);
    return list.mid(1, list.size() - 2).toStdString();
}

std::string valueText(const std::string& key, const std::string& text) {
    if (isYesNo(key)) return text == "yes" ? "true" : "false";
    return quoted(text);
}

/// Keys in the order of the document that tells of them; others behind, by name.
const std::vector<std::string>& memberOrder() {
    static const std::vector<std::string> order{"name",        "wood",     "family", "thickness",
                                                "counterbore", "width",    "gap",    "grain",
                                                "grain_slope", "end_grain"};
    return order;
}
const std::vector<std::string>& restOrder() {
    static const std::vector<std::string> order{"fastener.kind",
                                                "fastener.section",
                                                "fastener.gauge",
                                                "fastener.diameter",
                                                "fastener.length",
                                                "fastener.metal",
                                                "fastener.thread",
                                                "fastener",
                                                "hole",
                                                "service",
                                                "fitted",
                                                "zone",
                                                "duration",
                                                "kind_of_load",
                                                "load",
                                                "row",
                                                "placement"};
    return order;
}

std::size_t rankIn(const std::vector<std::string>& order, const std::string& key) {
    std::size_t best = order.size();
    for (std::size_t i = 0; i < order.size(); ++i) {
        if (key == order[i]) return i;
        if (best == order.size() && key.rfind(order[i] + ".", 0) == 0) best = i;
    }
    return best;
}

using Pairs = std::vector<std::pair<std::string, std::string>>;

Pairs inOrder(const BenchDraft::Texts& texts, const std::vector<std::string>& order) {
    Pairs pairs(texts.begin(), texts.end());
    std::stable_sort(pairs.begin(), pairs.end(), [&](const auto& a, const auto& b) {
        return rankIn(order, a.first) < rankIn(order, b.first);
    });
    return pairs;
}

/// One object of pairs whose keys may have dots: those of one front become an object of their own.
std::string objectText(const Pairs& pairs, const std::string& front, const std::string& indent) {
    std::string text = "{";
    std::vector<std::string> done;
    bool first = true;
    for (const auto& [key, value] : pairs) {
        if (key.rfind(front, 0) != 0) continue;
        const std::string name = key.substr(front.size());
        const auto dot = name.find('.');
        const std::string head = name.substr(0, dot);
        if (std::find(done.begin(), done.end(), head) != done.end()) continue;
        done.push_back(head);
        text += (first ? "\n" : ",\n") + indent + "  " + quoted(head) + ": ";
        text += dot == std::string::npos ? valueText(key, value)
                                         : objectText(pairs, front + head + ".", indent + "  ");
        first = false;
    }
    return text + (first ? "}" : "\n" + indent + "}");
}

std::string memberText(const BenchDraft::Texts& texts) {
    std::string text = "    {";
    bool first = true;
    for (const auto& [key, value] : inOrder(texts, memberOrder())) {
        text += (first ? "" : ", ") + quoted(key) + ": " + valueText(key, value);
        first = false;
    }
    return text + "}";
}

void flatten(const QJsonObject& object, const std::string& front, BenchDraft::Texts& texts) {
    for (auto at = object.begin(); at != object.end(); ++at) {
        const std::string key = front + at.key().toStdString();
        const QJsonValue value = at.value();
        if (value.isString()) texts[key] = value.toString().toStdString();
        if (value.isBool()) texts[key] = value.toBool() ? "yes" : "no";
        if (value.isDouble()) texts[key] = exactText(value.toDouble());
        if (value.isObject()) flatten(value.toObject(), key + ".", texts);
    }
}

void rename(BenchDraft::Texts& texts, const char* from, const char* to) {
    const auto found = texts.find(from);
    if (found == texts.end()) return;
    texts.try_emplace(to, found->second);
    texts.erase(found);
}

}  // namespace

std::string BenchDraft::at(const std::string& path) const {
    const auto member = memberPath(path);
    if (member && member->first >= members.size()) return {};
    const Texts& texts = member ? members[member->first] : rest;
    const auto found = texts.find(member ? member->second : path);
    return found == texts.end() ? std::string() : found->second;
}

void BenchDraft::set(const std::string& path, const std::string& text) {
    const auto member = memberPath(path);
    if (member && member->first >= members.size()) return;
    Texts& texts = member ? members[member->first] : rest;
    const std::string& key = member ? member->second : path;
    if (text.empty()) {
        texts.erase(key);
    } else {
        texts[key] = text;
    }
}

BenchDraft firstDraft() {
    BenchDraft draft;
    draft.members = {
        {{"name", "plank"},
         {"wood", "western_redcedar"},
         {"thickness", "1 1/8 in"},
         {"counterbore", "3/8 in"}},
        {{"name", "frame"}, {"wood", "white_oak"}, {"thickness", "2 1/2 in"}, {"grain", "90"}}};
    draft.rest = {{"fastener.kind", "wood_screw"},
                  {"fastener.gauge", "No. 14"},
                  {"fastener.length", "2 1/2 in"},
                  {"fastener.metal", "c65500_h02"},
                  {"hole.bung", "1/2 in"},
                  {"service", "wet"},
                  {"fitted", "dry"},
                  {"duration", "ten minutes"},
                  {"kind_of_load", "variable"},
                  {"load.lateral", "60 lb"},
                  {"load.axial", "20 lb"}};
    return draft;
}

std::string jointFileText(const BenchDraft& draft, UnitSystem units, Basis basis) {
    std::string text = "{\n  \"members\": [";
    for (std::size_t i = 0; i < draft.members.size(); ++i)
        text += (i == 0 ? "\n" : ",\n") + memberText(draft.members[i]);
    text += "\n  ]";
    std::string rest = objectText(inOrder(draft.rest, restOrder()), "", "");
    if (rest != "{}") text += "," + rest.substr(1, rest.size() - 3);
    if (!draft.group.empty()) text += ",\n  \"group\": " + draft.group;
    text += std::string(",\n  \"basis\": ") + (basis == Basis::ec5 ? "\"ec5\"" : "\"us\"");
    text += std::string(",\n  \"units\": ") +
            (units == UnitSystem::inches ? "\"inches\"" : "\"millimetres\"");
    return text + "\n}\n";
}

BenchDraft draftOf(const std::string& jointFile) {
    BenchDraft draft;
    const QJsonObject top = QJsonDocument::fromJson(QByteArray::fromStdString(jointFile)).object();
    for (const QJsonValue& member : top.value(QLatin1String("members")).toArray()) {
        draft.members.emplace_back();
        flatten(member.toObject(), "", draft.members.back());
        rename(draft.members.back(), "dowel_bearing", "bearing_us");
    }
    flatten(top, "", draft.rest);
    if (const QJsonValue group = top.value(QLatin1String("group")); group.isObject())
        draft.group = QJsonDocument(group.toObject()).toJson(QJsonDocument::Compact).toStdString();
    for (auto at = draft.rest.begin(); at != draft.rest.end();)
        at = at->first.rfind("group.", 0) == 0 ? draft.rest.erase(at) : std::next(at);
    // One name for each thing that a file may call by two.
    if (draft.rest.count("fastener.side") > 0 && draft.rest.count("fastener.section") == 0)
        draft.rest["fastener.section"] = "square";
    rename(draft.rest, "fastener.side", "fastener.diameter");
    rename(draft.rest, "fastener.tensile", "fastener.ultimate");
    rename(draft.rest, "demand.lateral", "load.lateral");
    rename(draft.rest, "demand.axial", "load.axial");
    for (const char* size : {".diameter", ".thickness"}) {
        const auto both = draft.rest.find(std::string("fastener.washer") + size);
        if (both == draft.rest.end()) continue;
        for (const char* end : {"fastener.head_washer", "fastener.point_washer"})
            draft.rest.try_emplace(std::string(end) + size, both->second);
        draft.rest.erase(both);
    }
    draft.rest.erase("basis");
    draft.rest.erase("units");
    return draft;
}

namespace {

/// Texts of a worked joint.
struct Texts {
    BenchDraft::Texts& texts;
    UnitSystem units;

    void length(const std::string& key, Length value) const {
        if (value.si() == 0.0) return;
        const bool inches = units == UnitSystem::inches;
        const std::string shown =
            displayLength(value, inches ? LengthStyle::inchFractions : LengthStyle::millimetres);
        const auto read = readLength(shown, key);
        texts[key] = read && *read == value
                         ? shown
                         : exactText(value, inches ? LengthUnit::in : LengthUnit::mm);
    }
    void length(const std::string& key, const std::optional<Length>& value) const {
        if (value) length(key, *value);
    }
    void force(const std::string& key, Force value) const {
        texts[key] = exactText(value, units == UnitSystem::inches ? ForceUnit::lbf : ForceUnit::n);
    }
    void stress(const std::string& key, const std::optional<Figure<Stress>>& figure) const {
        if (figure)
            texts[key] = exactText(figure->value,
                                   units == UnitSystem::inches ? StressUnit::psi : StressUnit::mpa);
    }
    template <typename T>
    void ratio(const std::string& key, const std::optional<Figure<T>>& figure) const {
        if (figure) texts[key] = exactText(figure->value.value);
    }
    void bearing(const std::string& key, const std::optional<EndBearing>& bearing) const {
        if (!bearing) return;
        length(key + ".diameter", bearing->diameter);
        length(key + ".thickness", bearing->thickness);
    }
};

void putMember(const JointMember& m, const std::optional<std::string>& wood, const Texts& put) {
    put.texts["name"] = m.name;
    if (wood) {
        put.texts["wood"] = *wood;
    } else {
        put.texts["family"] = std::string(woodFamilyText(m.family));
        put.ratio("specific_gravity", m.gravity);
        put.ratio("specific_gravity_twelve", m.gravityTwelve);
        if (m.density)
            put.texts["density"] = exactText(m.density->value.value, DensityUnit::kgPerM3);
        put.stress("across_us", m.acrossUs);
        put.stress("across_ec5", m.acrossEc5);
        put.stress("across_mean", m.acrossMean);
    }
    put.stress("tension_us", wood ? std::nullopt : m.tensionUs);
    put.stress("shear_us", wood ? std::nullopt : m.shearUs);
    put.stress("tension_ec5", wood ? std::nullopt : m.tensionEc5);
    put.length("width", m.width);
    if (m.grainSlope) put.texts["grain_slope"] = exactText(*m.grainSlope);
    put.stress("bearing_us", m.bearingUs);
    put.stress("embedment_ec5", m.embedmentEc5);
    put.length("thickness", m.thickness);
    put.length("counterbore", m.counterbore);
    put.length("gap", m.gap);
    if (m.grain.inDegrees() != 0.0) put.texts["grain"] = exactText(m.grain.inDegrees());
    if (m.endGrain) put.texts["end_grain"] = "yes";
}

void putFastener(const NamedJoint& named, const Texts& put) {
    const JointFastener& f = named.joint.fastener;
    auto& texts = put.texts;
    texts["fastener.kind"] = std::string(nameOf(f.kind));
    if (f.section == DowelSection::square) texts["fastener.section"] = "square";
    if (f.gauge) texts["fastener.gauge"] = exactText(*f.gauge);
    if (!f.gauge) put.length("fastener.diameter", f.diameter);
    put.length("fastener.length", f.length);
    put.length("fastener.root", f.root);
    if (f.roots == ScrewRoots::code) texts["fastener.roots"] = "code";
    put.length("fastener.thread_length", f.threadLength);
    put.length("fastener.tip", f.tip);
    if (f.threadBears) texts["fastener.thread_bears"] = "yes";
    texts["fastener.ends.head"] = std::string(nameOf(f.head));
    texts["fastener.ends.point"] = std::string(nameOf(f.point));
    put.length("fastener.head_diameter", f.headDiameter);
    put.length("fastener.head_height", f.headHeight);
    put.stress("fastener.head_strength", f.headStrengthEc5);
    put.bearing("fastener.head_washer", f.headBearing);
    put.bearing("fastener.point_washer", f.pointBearing);
    put.length("fastener.corrosion", f.corrosion);
    if (named.metal) {
        texts["fastener.metal"] = *named.metal;
    } else {
        put.stress("fastener.yield", f.metal.yield);
        put.stress("fastener.ultimate", f.metal.ultimate);
        put.stress("fastener.yield_typical", f.metal.yieldTypical);
        put.stress("fastener.ultimate_typical", f.metal.ultimateTypical);
        put.stress("fastener.shear", f.metal.shear);
        put.stress("fastener.bending_yield", f.metal.bendingYield);
    }
    if (f.metal.factor != FastenerMetal{}.factor)
        texts["fastener.metal_factor"] = exactText(f.metal.factor);
    put.length("fastener.pitch", f.pitch);
    put.length("fastener.nut_height", f.nutHeight);
    put.stress("fastener.nut_shear", f.nutShear);
    put.length("fastener.peen_height", f.peenHeight);
    put.length("hole.slip_fit", f.screwHole.slipFit);
    put.length("hole.pilot", f.screwHole.pilot);
    put.length("hole.pilot_tip", f.screwHole.pilotTip);
    put.length("hole.bit", f.screwHole.bit);
    put.length("hole.collar", f.screwHole.collar);
    put.length("hole.diameter", f.hole);
    put.length("hole.bung", f.bung);
}

}  // namespace

BenchDraft draftOf(const NamedJoint& named) {
    BenchDraft draft;
    const Joint& joint = named.joint;
    for (std::size_t i = 0; i < joint.members.size(); ++i) {
        draft.members.emplace_back();
        putMember(joint.members[i], i < named.woods.size() ? named.woods[i] : std::nullopt,
                  {draft.members.back(), named.units});
    }
    const Texts put{draft.rest, named.units};
    putFastener(named, put);
    draft.rest["service"] = joint.service == Service::dry ? "dry" : "wet";
    draft.rest["fitted"] = joint.fitted == Fitted::dry ? "dry" : "wet";
    draft.rest["zone"] = std::string(nameOf(named.zone));
    if (joint.heel) draft.rest["heel"] = "yes";
    draft.rest["duration"] = std::string(nameOf(joint.duration));
    draft.rest["kind_of_load"] = std::string(nameOf(joint.kindOfLoad));
    if (joint.load) {
        put.force("load.lateral", joint.load->lateral);
        put.force("load.axial", joint.load->axial);
    }
    return draft;
}

}  // namespace fayline
