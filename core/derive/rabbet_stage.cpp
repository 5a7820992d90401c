#include "rabbet_stage.h"

namespace fayline {

CurveInput curveInput(std::shared_ptr<const HullShape> hull, Length x, const RabbetRule& rule) {
    const bool given = hull->rabbet && hull->rabbet->at(x);
    return {std::move(hull), x, given ? std::nullopt : std::optional(rule)};
}

RabbetRule rabbetRule(const Project& project, const Structure& structure) {
    return {structure.keel, project.planking.thickness.value_or(Length{})};
}

PlankingLine curveStage(const CurveInput& input) {
    PlankingLine line;
    if (!input.hull->surface || !input.hull->surface->spans(input.x)) return line;
    const Section section = input.hull->surface->sectionAt(input.x);
    if (!input.rule) {
        if (const auto given = input.hull->rabbet->at(input.x)) line.rabbet = {*given, false};
    } else if (input.rule->keel) {
        const KeelTimber& keel = *input.rule->keel;
        const auto underside = keelUndersideAt(keel, input.x);
        Length half = keel.sided / 2.0;
        if (!underside) half = min(half, section.points.front().y);
        line.rabbet = {rabbetByRule(section, half, input.rule->planking, underside), true};
    }
    line.curve = line.rabbet ? FrameCurve::from(section, line.rabbet->at)
                             : FrameCurve::above(section, std::nullopt);
    return line;
}

}  // namespace fayline
