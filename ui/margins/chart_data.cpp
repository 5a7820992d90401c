#include "chart_data.h"

#include <QCoreApplication>
#include <algorithm>
#include <unordered_map>

#include "words/checks.h"

namespace fayline {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("MarginCharts", words);
}

constexpr double highestShown = 6.0;
constexpr std::size_t mostSeries = 4;

ChartData overFrames(const Results& results) {
    ChartData data;
    data.across = tr("frame");
    for (const FramePlace& frame : results.structure->frames) data.places.append(asText(frame.id));
    return data;
}

using Places = std::unordered_map<std::string, std::size_t>;
Places placesOf(const Results& results) {
    Places places;
    for (std::size_t i = 0; i < results.structure->frames.size(); ++i)
        places[results.structure->frames[i].id] = i;
    return places;
}

bool hasMoment(const CaseLoads& loads) {
    return std::any_of(loads.frames.begin(), loads.frames.end(), [](const FrameShare& share) {
        return std::abs(inNewtonMetres(share.keelMoment)) > 0.5;
    });
}

double momentIn(Moment moment, UnitSystem units) {
    constexpr double newtonMetresPerFootPound = 1.3558179483314004;
    return units == UnitSystem::inches ? inNewtonMetres(moment) / newtonMetresPerFootPound
                                       : inNewtonMetres(moment) / 1000.0;
}

}  // namespace

ChartData worstByFrame(const Results& results, const std::optional<LoadCase>& loadCase,
                       const std::string& group) {
    ChartData data = overFrames(results);
    data.title = loadCase ? tr("Worst margin, %1").arg(asText(titleOf(*loadCase)))
                          : tr("Worst margin of all load cases");
    data.up = tr("margin");
    data.emptyText = tr("No margins here yet: nothing is checked with what is chosen above.");
    const Places places = placesOf(results);
    for (const Basis basis : {Basis::us, Basis::ec5}) {
        ChartSeries series;
        series.name = basisWords(basis);
        series.values.resize(places.size());
        data.series.push_back(std::move(series));
    }
    auto& us = data.series[0].values;
    auto& ec5 = data.series[1].values;
    for (const auto& set : results.checkSets) {
        auto place = places.end();
        for (const Check& check : set->checks) {
            if (!check.margin || (loadCase && check.loadCase != *loadCase)) continue;
            if (!group.empty() && check.group != group) continue;
            if (place == places.end() || place->first != check.frame)
                place = places.find(check.frame);
            if (place == places.end()) continue;
            const auto lower = [&](std::optional<double>& value) {
                value = value ? std::min(*value, *check.margin) : *check.margin;
            };
            if (check.basis != Basis::ec5) lower(us[place->second]);
            if (check.basis != Basis::us) lower(ec5[place->second]);
        }
    }
    data.figures = ChartData::Figures::margins;
    data.limits = {{1.0, tr("×1, just held")}};
    data.top = highestShown;
    return data;
}

ChartData momentByFrame(const Results& results, const std::optional<LoadCase>& loadCase,
                        UnitSystem units) {
    ChartData data = overFrames(results);
    data.title = tr("Moment about the keel that each frame takes");
    data.up = tr("keel moment");
    data.unit = units == UnitSystem::inches ? tr("ft·lb") : tr("kN·m");
    data.emptyText = tr("No load case with a moment about the keel is worked out yet.");
    const Places places = placesOf(results);
    for (const auto& loads : results.cases) {
        if (loadCase ? loads->loadCase != *loadCase : !hasMoment(*loads)) continue;
        if (data.series.size() == mostSeries) break;
        ChartSeries series;
        series.name = asText(titleOf(loads->loadCase));
        series.values.resize(places.size());
        for (const FrameShare& share : loads->frames) {
            const auto place = places.find(share.frame);
            if (place != places.end())
                series.values[place->second] = momentIn(share.keelMoment, units);
        }
        data.series.push_back(std::move(series));
    }
    return data;
}

ChartData shareByFrame(const Results& results, const std::optional<LoadCase>& loadCase) {
    ChartData data = overFrames(results);
    data.kind = ChartData::Kind::bars;
    data.title = tr("How the frames share the ballast's load");
    data.up = tr("share");
    data.unit = QStringLiteral("%");
    data.emptyText = tr("No ballast load is shared over frames yet.");
    const auto found = std::find_if(results.cases.begin(), results.cases.end(), [&](const auto& c) {
        return loadCase ? c->loadCase == *loadCase : !c->frames.empty();
    });
    if (found == results.cases.end()) return data;
    const Places places = placesOf(results);
    data.series = {{tr("what lies nearest"), std::vector<std::optional<double>>(places.size())},
                   {tr("a stiff ballast"), std::vector<std::optional<double>>(places.size())}};
    for (const FrameShare& share : (*found)->frames) {
        const auto place = places.find(share.frame);
        if (place == places.end()) continue;
        data.series[0].values[place->second] = 100.0 * share.tributary;
        data.series[1].values[place->second] = 100.0 * share.rigid;
    }
    return data;
}

}  // namespace fayline
