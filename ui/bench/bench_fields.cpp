#include "bench_fields.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include "words/values.h"

namespace fayline {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("BenchFields", words);
}

QString withoutBotanicalName(const std::string& name) {
    const auto bracket = name.rfind(" (");
    return asText(bracket == std::string::npos ? name : name.substr(0, bracket));
}

QString wordOf(const std::string& word) {
    return asText(word).replace(QLatin1Char('_'), QLatin1Char(' '));
}

constexpr FastenerKind screw = FastenerKind::woodScrew, bolt = FastenerKind::bolt,
                       drift = FastenerKind::drift, rivet = FastenerKind::rivet;

const std::vector<std::string>& headWords() {
    static const std::vector<std::string> words{"head", "nut",    "formed_head", "clench_ring",
                                                "rove", "peened", "countersunk"};
    return words;
}
std::vector<std::string> pointWords() {
    std::vector<std::string> words = headWords();
    words.insert(words.end(), {"thread", "blind"});
    return words;
}

}  // namespace

const std::vector<BenchField>& memberFields() {
    using K = BenchKind;
    static const std::vector<BenchField> fields{
        {"name", tr("Name"), tr("What this member is called in the results."), K::text},
        {"wood", tr("Wood"), tr("A wood of the catalogue; or give its figures below."), K::wood},
        {"thickness", tr("Thickness"), tr("Along the fastening, before any counterbore."),
         K::length},
        {"counterbore", tr("Counterbore"),
         tr("How deep the head or nut is sunk. First and last member only."), K::length},
        {"gap", tr("Gap behind"), tr("Bedding, felt or shim between this and the next member."),
         K::length},
        {"grain", tr("Load to grain"), tr("0 when the load runs along the grain, 90 across it."),
         K::degrees},
        {"width",
         tr("Width"),
         tr("Square to the fastening and to the grain."),
         K::length,
         {},
         {},
         true},
        {"grain_slope",
         tr("Slope of grain, 1 in"),
         tr("Of timber sawn across its grain: 1 in so many."),
         K::ratio,
         {},
         {},
         true},
        {"lead",
         tr("or of lead"),
         tr("A ballast lead of the catalogue, in place of a wood."),
         K::lead,
         {},
         {},
         true},
        {"family",
         tr("Family"),
         tr("Needed where no wood is named."),
         K::word,
         {"softwood", "hardwood"},
         {},
         true},
        {"specific_gravity",
         tr("Specific gravity"),
         tr("Oven-dry mass and volume."),
         K::ratio,
         {},
         {},
         true},
        {"specific_gravity_twelve",
         tr("the same, at 12 %"),
         tr("Oven-dry mass, volume at 12 % moisture."),
         K::ratio,
         {},
         {},
         true},
        {"density",
         tr("Density"),
         tr("Characteristic, mass and volume at 12 %."),
         K::density,
         {},
         {},
         true},
        {"bearing_us",
         tr("Dowel bearing, US"),
         tr("Measured, in place of the formula."),
         K::stress,
         {},
         {},
         true},
        {"embedment_ec5",
         tr("Embedment, Eurocode 5"),
         tr("Declared, in place of the formula."),
         K::stress,
         {},
         {},
         true},
        {"across_us",
         tr("Across the grain, US"),
         tr("Allowable compression under head or washer."),
         K::stress,
         {},
         {},
         true},
        {"across_ec5",
         tr("Across the grain, EC5"),
         tr("Characteristic compression."),
         K::stress,
         {},
         {},
         true},
        {"across_mean",
         tr("Across the grain, mean"),
         tr("Mean, wet, at the proportional limit."),
         K::stress,
         {},
         {},
         true},
        {"tension_us",
         tr("Tension along, US"),
         tr("Allowable, for the wood the hole leaves."),
         K::stress,
         {},
         {},
         true},
        {"shear_us",
         tr("Shear along, US"),
         tr("Allowable, for splitting."),
         K::stress,
         {},
         {},
         true},
        {"tension_ec5", tr("Tension along, EC5"), tr("Characteristic."), K::stress, {}, {}, true},
        {"end_grain",
         tr("In end grain"),
         tr("The fastening runs along this member's grain."),
         K::yesNo,
         {},
         {},
         true}};
    return fields;
}

const std::vector<BenchField>& fastenerFields() {
    using K = BenchKind;
    static const std::vector<BenchField> fields{
        {"fastener.kind",
         tr("Kind"),
         tr("What holds the joint."),
         K::word,
         {"wood_screw", "bolt", "drift", "rivet"}},
        {"fastener.gauge",
         tr("Gauge"),
         tr("Of a wood screw, such as No. 14."),
         K::gauge,
         {},
         {screw}},
        {"fastener.section",
         tr("Section"),
         tr("Round or square shank."),
         K::word,
         {"round", "square"},
         {bolt, drift, rivet}},
        {"fastener.diameter", tr("Diameter"),
         tr("Of the body; the side of a square one. A screw's follows from its gauge."), K::length},
        {"fastener.length", tr("Length"),
         tr("Over all for a flat head. Of bolts and rivets what stands proud is checked."),
         K::length},
        {"fastener.metal", tr("Metal"), tr("A metal of the catalogue; or give its figures below."),
         K::metal},
        {"fastener.thread",
         tr("Thread"),
         tr("Gives the root under the nut."),
         K::thread,
         {},
         {bolt}},
        {"fastener.nut",
         tr("Nut"),
         tr("Gives its height and pitch, against stripping."),
         K::nut,
         {},
         {bolt}},
        {"fastener.head_washer.diameter",
         tr("Washer under the head"),
         tr("Diameter of whatever bears on the wood there."),
         K::length,
         {},
         {bolt, drift, rivet}},
        {"fastener.head_washer.thickness",
         tr("its thickness"),
         tr("Of that washer."),
         K::length,
         {},
         {bolt, drift, rivet}},
        {"fastener.point_washer.diameter",
         tr("Washer at the point"),
         tr("Washer, ring or rove at the far end."),
         K::length,
         {},
         {bolt, rivet}},
        {"fastener.point_washer.thickness",
         tr("its thickness"),
         tr("Of that washer."),
         K::length,
         {},
         {bolt, rivet}},
        {"hole.bung", tr("Plug"), tr("Diameter of the plug over the head."), K::length},
        {"hole.diameter",
         tr("Hole in the wood"),
         tr("A drift holds only in a hole 1/8 in smaller than itself."),
         K::length,
         {},
         {bolt, drift, rivet}},
        {"fastener.ends.head",
         tr("Head"),
         tr("What holds at the head's end."),
         K::word,
         headWords(),
         {},
         true},
        {"fastener.ends.point",
         tr("Point"),
         tr("What holds at the far end."),
         K::word,
         pointWords(),
         {},
         true},
        {"fastener.root",
         tr("Root, measured"),
         tr("At the thread's root."),
         K::length,
         {},
         {},
         true},
        {"fastener.roots",
         tr("Root, else"),
         tr("As sold, or as the US code's table has it."),
         K::word,
         {"measured", "code"},
         {screw},
         true},
        {"fastener.thread_length",
         tr("Thread length"),
         tr("As measured."),
         K::length,
         {},
         {screw},
         true},
        {"fastener.tip", tr("Tip"), tr("Length of the taper."), K::length, {}, {screw}, true},
        {"fastener.thread_bears",
         tr("Thread bears on wood"),
         tr("Thread fills a quarter or more of a bearing length."),
         K::yesNo,
         {},
         {bolt},
         true},
        {"fastener.head_diameter",
         tr("Head, diameter"),
         tr("As measured."),
         K::length,
         {},
         {},
         true},
        {"fastener.head_height",
         tr("Head, height"),
         tr("Of a solid head, for shearing off."),
         K::length,
         {},
         {},
         true},
        {"fastener.head_strength",
         tr("Head, declared"),
         tr("Pull-through strength declared."),
         K::stress,
         {},
         {},
         true},
        {"fastener.pitch", tr("Pitch"), tr("Of a nut's thread."), K::length, {}, {bolt}, true},
        {"fastener.nut_height", tr("Nut, height"), tr("As measured."), K::length, {}, {bolt}, true},
        {"fastener.nut_shear",
         tr("Nut, shear"),
         tr("Where the nut is of another metal."),
         K::stress,
         {},
         {bolt},
         true},
        {"fastener.peen_height",
         tr("Peened end"),
         tr("Its height beyond rove or ring."),
         K::length,
         {},
         {},
         true},
        {"fastener.slant",
         tr("Slant"),
         tr("Of a drift, in degrees: shown, never credited."),
         K::degrees,
         {},
         {drift},
         true},
        {"hole.slip_fit",
         tr("Bore of the outer timbers"),
         tr("Through which the screw slips."),
         K::length,
         {},
         {screw},
         true},
        {"hole.pilot",
         tr("Pilot"),
         tr("The bit where the thread begins."),
         K::length,
         {},
         {screw},
         true},
        {"hole.pilot_tip",
         tr("Pilot at its point"),
         tr("Of a tapered bit."),
         K::length,
         {},
         {screw},
         true},
        {"hole.bit", tr("Bit, length"), tr("Below the counterbore."), K::length, {}, {screw}, true},
        {"hole.collar",
         tr("Stop collar"),
         tr("From the bit's point."),
         K::length,
         {},
         {screw},
         true},
        {"fastener.yield_moment",
         tr("Yield moment"),
         tr("Measured, in place of the formulas; with its unit, such as 12 Nm."),
         K::text,
         {},
         {},
         true},
        {"fastener.corrosion",
         tr("Corrosion"),
         tr("Off the radius of the metal."),
         K::length,
         {},
         {},
         true},
        {"fastener.yield",
         tr("Yield"),
         tr("Least, in place of the catalogue's."),
         K::stress,
         {},
         {},
         true},
        {"fastener.ultimate",
         tr("Ultimate"),
         tr("Least, in place of the catalogue's."),
         K::stress,
         {},
         {},
         true},
        {"fastener.yield_typical",
         tr("Yield, typical"),
         tr("For when it starts to give."),
         K::stress,
         {},
         {},
         true},
        {"fastener.ultimate_typical",
         tr("Ultimate, typical"),
         tr("For when it comes apart."),
         K::stress,
         {},
         {},
         true},
        {"fastener.shear", tr("Shear"), tr("Ultimate."), K::stress, {}, {}, true},
        {"fastener.bending_yield",
         tr("Bending yield"),
         tr("Else the mean of yield and ultimate."),
         K::stress,
         {},
         {},
         true},
        {"fastener.metal_factor",
         tr("Factor on metal"),
         tr("On the smaller of yield and half the ultimate."),
         K::ratio,
         {},
         {},
         true}};
    return fields;
}

const std::vector<BenchField>& loadFields() {
    using K = BenchKind;
    static const std::vector<BenchField> fields{
        {"load.lateral", tr("Load sideways"), tr("On this one fastening, 0 or more."), K::force},
        {"load.axial", tr("Load along it"), tr("Above 0 when it pulls."), K::force},
        {"service",
         tr("In service"),
         tr("Wet for a boat that lies afloat."),
         K::word,
         {"dry", "wet"}},
        {"fitted",
         tr("Fastened when"),
         tr("Moisture of the timber when it was fastened."),
         K::word,
         {"dry", "wet"}},
        {"zone",
         tr("Moisture zone"),
         tr("Soaked: bilge and backbone. Cycling: topsides. Drier: clamp and beams."),
         K::word,
         {"soaked", "cycling", "drier"}},
        {"duration",
         tr("Duration"),
         tr("How long the load lasts, all its times added."),
         K::word,
         {"permanent", "ten years", "two months", "seven days", "ten minutes"}},
        {"kind_of_load",
         tr("Kind of load"),
         tr("For Eurocode 5."),
         K::word,
         {"permanent", "variable", "accidental"}},
        {"shear",
         tr("Shear"),
         tr("Double with two members puts the first on both sides of the second."),
         K::word,
         {"single", "double"},
         {},
         true},
        {"heel",
         tr("A frame's heel"),
         tr("On the keel: the trade's inch and a half is checked."),
         K::yesNo,
         {},
         {},
         true},
        {"row.count",
         tr("In a row"),
         tr("Fastenings in one row along the load."),
         K::count,
         {},
         {},
         true},
        {"row.spacing",
         tr("Spacing in the row"),
         tr("From one to the next."),
         K::length,
         {},
         {},
         true},
        {"row.main.area",
         tr("Main member, area"),
         tr("Of its whole section, for the row's action."),
         K::area,
         {},
         {},
         true},
        {"row.main.modulus",
         tr("Main member, modulus"),
         tr("Of elasticity."),
         K::stress,
         {},
         {},
         true},
        {"row.side.area",
         tr("Side member, area"),
         tr("Of its whole section."),
         K::area,
         {},
         {},
         true},
        {"row.side.modulus",
         tr("Side member, modulus"),
         tr("Of elasticity."),
         K::stress,
         {},
         {},
         true},
        {"placement.end",
         tr("To the end"),
         tr("From the fastening to the member's end."),
         K::length,
         {},
         {},
         true},
        {"placement.load",
         tr("Load lies"),
         tr("To that end."),
         K::word,
         {"toward_end", "along", "across"},
         {},
         true},
        {"placement.spacing",
         tr("To the next"),
         tr("In a row along the grain."),
         K::length,
         {},
         {},
         true},
        {"placement.edge",
         tr("To the edge"),
         tr("The loaded or nearer one."),
         K::length,
         {},
         {},
         true},
        {"placement.edge_loaded_across",
         tr("Loaded towards it"),
         tr("Across the grain."),
         K::yesNo,
         {},
         {},
         true}};
    return fields;
}

bool isChosen(BenchKind kind) {
    return kind == BenchKind::word || kind == BenchKind::wood || kind == BenchKind::metal ||
           kind == BenchKind::lead || kind == BenchKind::nut || kind == BenchKind::thread ||
           kind == BenchKind::yesNo;
}

std::vector<Choice> choicesFor(const BenchField& field, const Catalogue& catalogue) {
    std::vector<Choice> choices;
    switch (field.kind) {
        case BenchKind::word:
            for (const std::string& word : field.words) choices.push_back({word, wordOf(word)});
            break;
        case BenchKind::yesNo:
            choices = {{"yes", tr("yes")}, {"no", tr("no")}};
            break;
        case BenchKind::wood:
            for (const auto& [id, wood] : catalogue.woods)
                choices.push_back({id, withoutBotanicalName(wood.name.value)});
            break;
        case BenchKind::lead:
            for (const auto& [id, metal] : catalogue.metals) {
                if (metal.family == MetalFamily::lead)
                    choices.push_back({id, asText(metal.name.value)});
            }
            break;
        case BenchKind::nut:
            for (const auto& [id, nut] : catalogue.nuts) choices.push_back({id, wordOf(id)});
            break;
        case BenchKind::metal:
            for (const auto& [id, metal] : catalogue.metals)
                choices.push_back({id, asText(metal.name.value)});
            break;
        case BenchKind::thread:
            for (const auto& [id, thread] : catalogue.threads) choices.push_back({id, wordOf(id)});
            break;
        default:
            break;
    }
    return choices;
}

QString unitOf(const BenchField& field, UnitSystem units) {
    const bool inches = units == UnitSystem::inches;
    switch (field.kind) {
        case BenchKind::length:
            return inches ? QStringLiteral("in") : QStringLiteral("mm");
        case BenchKind::force:
            return inches ? QStringLiteral("lb") : QStringLiteral("N");
        case BenchKind::stress:
            return inches ? QStringLiteral("psi") : QStringLiteral("MPa");
        case BenchKind::density:
            return inches ? QStringLiteral("lb/ft3") : QStringLiteral("kg/m3");
        case BenchKind::area:
            return inches ? QStringLiteral("in2") : QStringLiteral("mm2");
        case BenchKind::degrees:
            return QStringLiteral("°");
        default:
            return {};
    }
}

std::string fileText(const BenchField& field, const QString& typed, UnitSystem units,
                     const Catalogue& catalogue) {
    const QString text = typed.trimmed();
    if (text.isEmpty()) return {};
    if (isChosen(field.kind)) return idForName(choicesFor(field, catalogue), text.toStdString());
    static const QRegularExpression bare(QStringLiteral("^-?[0-9 .,/⁄½¼¾⅛⅜⅝⅞-]+$"));
    static const QRegularExpression groups(QStringLiteral("^[0-9]+-[0-9]+-[0-9]+$"));
    const QString unit = unitOf(field, units);
    if (field.kind == BenchKind::degrees) return QString(text).remove(QChar(0x00B0)).toStdString();
    if (field.kind == BenchKind::gauge && bare.match(text).hasMatch())
        return "No. " + text.toStdString();
    if (!unit.isEmpty() && bare.match(text).hasMatch() && !groups.match(text).hasMatch())
        return (text + QLatin1Char(' ') + unit).toStdString();
    return text.toStdString();
}

QString shownText(const BenchField& field, const std::string& text, const Catalogue& catalogue) {
    if (isChosen(field.kind)) {
        for (const Choice& choice : choicesFor(field, catalogue)) {
            if (choice.id == text) return choice.name;
        }
    }
    return asText(text);
}

}  // namespace fayline
