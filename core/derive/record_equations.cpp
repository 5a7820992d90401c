// What the modes of lateral yield and the factors are worked out from. Facts of the codes named.

#include "joint/limit_state.h"
#include "joint/us_factors.h"
#include "record_joint.h"
#include "record_values.h"

namespace fayline {
namespace {

using Rows = std::vector<std::vector<std::string>>;

void addUs(std::vector<record::Block>& blocks) {
    blocks.emplace_back(record::Heading{2, "Equations behind the modes, US basis"});
    blocks.emplace_back(record::Paragraph{
        "",
        "General dowel equations (AWC Technical Report 12, Table 1-1); with no gap and one moment "
        "they are the closed forms of NDS Table 12.3.1A. q = F_e · D; M = F_yb · D³/6 round, "
        "F_yb · a³/4 square; index s the side member (towards the head), m the main one; l the "
        "length that bears, g the gap between the two. Modes II to IV: P = (−B + √(B² − 4·A·C)) / "
        "(2·A). Reference load of a mode: P / R_d.",
        false});
    blocks.emplace_back(record::Table{
        {"mode", "A", "B", "C"},
        Rows{{"Im", "P = q_m · l_m", "", ""},
             {"Is", "P = q_s · l_s", "", ""},
             {"II", "1/(4·q_s) + 1/(4·q_m)", "l_s/2 + g + l_m/2", "−q_s·l_s²/4 − q_m·l_m²/4"},
             {"IIIm", "1/(2·q_s) + 1/(4·q_m)", "g + l_m/2", "−M_s − q_m·l_m²/4"},
             {"IIIs", "1/(4·q_s) + 1/(2·q_m)", "l_s/2 + g", "−q_s·l_s²/4 − M_m"},
             {"IV", "1/(2·q_s) + 1/(2·q_m)", "g", "−M_s − M_m"}},
        {}});
    blocks.emplace_back(record::Paragraph{
        "",
        "Two planes about one main member: Im as above for the whole fastening, Is, IIIs and IV "
        "twice; II and IIIm cannot form. R_d (NDS Table 12.3.1B): D below 1/4 in, K_D for every "
        "mode, 2.2 to 0.17 in and 10·D + 0.5 above; else 4·K_θ for Im and Is, 3.6·K_θ for II, "
        "3.2·K_θ for the rest; K_θ = 1 + 0.25·θ/90°. F_e (NDS Table 12.3.3), psi: D below 1/4 in "
        "16600·G^1.84; else 11200·G along the grain, 6100·G^1.45/√D across it, Hankinson's formula "
        "between.",
        false});
}

void addEc5(std::vector<record::Block>& blocks) {
    blocks.emplace_back(record::Heading{2, "Equations behind the modes, Eurocode 5"});
    blocks.emplace_back(record::Paragraph{
        "",
        "EN 1995-1-1 8.6 and 8.7, N and mm, for one plane; β = f_h,2 / f_h,1; member 1 on the "
        "head's side. Rope, added to the governing mode where it bends the fastening or turns it: "
        "F_ax,Rk / 4, at most the share of the Johansen part that 8.2.2(2) allows the kind of "
        "fastening.",
        false});
    blocks.emplace_back(record::Table{
        {"mode", "characteristic load of one plane"},
        Rows{
            {"a, g", "f_h,1 · t_1 · d"},
            {"b", "f_h,2 · t_2 · d"},
            {"h", "0.5 · f_h,2 · t_2 · d"},
            {"c",
             "f_h,1 · t_1 · d / (1+β) · (√(β + 2β²·(1 + t_2/t_1 + (t_2/t_1)²) + β³·(t_2/t_1)²) − "
             "β·(1 + t_2/t_1)) + rope"},
            {"d, j",
             "1.05 · f_h,1 · t_1 · d / (2+β) · (√(2β·(1+β) + 4β·(2+β)·M_y / (f_h,1·d·t_1²)) − β) + "
             "rope"},
            {"e",
             "1.05 · f_h,1 · t_2 · d / (1+2β) · (√(2β²·(1+β) + 4β·(1+2β)·M_y / (f_h,1·d·t_2²)) − "
             "β) + rope"},
            {"f, k", "1.15 · √(2β/(1+β)) · √(2·M_y·f_h,1·d) + rope"}},
        {}});
    blocks.emplace_back(record::Paragraph{
        "",
        "f_h = 0.082·(1 − 0.01·d)·ρ_k (8.16, 8.32), above 6 mm effective diameter of screws and "
        "for "
        "bolts divided by k_90·sin²α + cos²α, k_90 = 1.35 + 0.015·d softwood, 0.90 + 0.015·d "
        "hardwood (8.31, 8.33). M_y = 0.3·f_u·d^2.6 round, 0.45·f_u·a^2.6 square (8.14, 8.30). "
        "The standard knows no gap: with one, each mode is reduced as the general dowel equations "
        "reduce it.",
        false});
}

}  // namespace

void addEquations(std::vector<record::Block>& blocks, bool us, bool ec5) {
    if (us) addUs(blocks);
    if (ec5) addEc5(blocks);
}

void addFactorSets(std::vector<record::Block>& blocks) {
    using record_values::digits;
    Rows rows;
    for (const Duration duration : {Duration::permanent, Duration::tenYears, Duration::twoMonths,
                                    Duration::sevenDays, Duration::tenMinutes}) {
        rows.push_back({std::string(nameOf(duration)), digits(durationFactorUs(duration), 3),
                        digits(kMod(duration, Service::dry), 3),
                        digits(kMod(duration, Service::wet), 3)});
    }
    blocks.emplace_back(record::Table{
        {"duration", "US C_D", "Eurocode 5 k_mod, dry (class 1, 2)", "k_mod, wet (class 3)"},
        std::move(rows),
        {}});
    blocks.emplace_back(record::Paragraph{
        "US",
        "loads as they are; reference loads times C_D (NDS 2.3.2), C_M (Table 11.3.3), C_g, C_Δ, "
        "C_eg. C_D never on metal, nor on wood crushed across the grain.",
        false});
    blocks.emplace_back(record::Paragraph{
        "Eurocode 5",
        "loads times the factor of their case; R_d = k_mod · R_k / γ_M (Tables 3.1, 2.3), γ_M = " +
            digits(gammaM(KindOfLoad::variable), 3) + ", accidental loads " +
            digits(gammaM(KindOfLoad::accidental), 3) + ".",
        false});
    blocks.emplace_back(record::Paragraph{
        "Metal",
        "neither timber code covers bronze or copper: the smaller of yield and half the ultimate, "
        "on the net section less corrosion, over a factor of its own; the same under both.",
        false});
}

void addReading(std::vector<record::Block>& blocks, UnitSystem units) {
    blocks.emplace_back(record::Paragraph{
        "How to read it",
        std::string("Figures stand in ") +
            (units == UnitSystem::inches ? "inches and pounds" : "millimetres and newtons") +
            ", the other system beside them, to four digits; they were worked out with more. "
            "Standing says how far a figure can be trusted: read in the source named; derived from "
            "others; common practice without a published source; from memory, to be confirmed; "
            "judgement. 'Outside the range' stands where a formula was used beyond what it was "
            "made for. 'Starts to give' and 'comes apart' are physical loads, not working loads.",
        false});
}

}  // namespace fayline
