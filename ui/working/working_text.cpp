#include "working/working_text.h"

#include <QCoreApplication>
#include <QStringList>

#include "words/checks.h"
#include "words/things.h"
#include "words/trace_values.h"

namespace fayline {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("Working", words);
}

QString force(const std::optional<Force>& value, UnitSystem units) {
    return value ? asText(displayForce(*value, units)) : tr("not known");
}
QString band(const std::optional<Band>& value, UnitSystem units) {
    if (!value) return tr("no source");
    if (value->low == value->high) return asText(displayForce(value->low, units));
    return tr("%1 to %2")
        .arg(asText(displayForce(value->low, units)), asText(displayForce(value->high, units)));
}

void addBasis(QStringList& lines, const Check& check, UnitSystem units) {
    lines.append(tr("%1: %2, demand %3, can carry %4, starts to give %5, comes apart %6; %7")
                     .arg(basisWords(check.basis), marginWords(check), force(check.demand, units),
                          force(check.working, units), band(check.gives, units),
                          band(check.apart, units), asText(check.clause)));
}

}  // namespace

Working workingOf(const Results& results, const Check& check) {
    Working working;
    working.check = check;
    working.trace = explain(results, check);
    if (const Check* other = otherBasis(results, check)) working.other = *other;
    for (const Check* each : checksOf(results, check.id)) {
        if (*each == check || each->status == Status::unloaded) continue;
        working.others.push_back(each);
    }
    return working;
}

QString workingTitle(const Check& check) {
    return tr("%1: %2").arg(thingTitle(check.id), stateWords(check));
}

QString workingText(const Working& working, const Speech& speech) {
    const Check& check = working.check;
    QStringList lines;
    lines.append(workingTitle(check));
    lines.append(tr("%1, %2, %3")
                     .arg(marginWords(check), asText(nameOf(check.status)),
                          asText(titleOf(check.loadCase))));
    lines.append(plainSentence(check, speech.units));
    lines.append(check.soft ? tr("It would give slowly.") : tr("It would go suddenly."));
    for (const std::string& outside : check.outside)
        lines.append(tr("Outside the range: %1").arg(asText(outside)));
    lines.append(QString());
    addBasis(lines, check, speech.units);
    if (working.other) addBasis(lines, *working.other, speech.units);
    if (working.trace) {
        const Trace& trace = *working.trace;
        lines.append({QString(), asText(trace.title), asText(trace.formula),
                      tr("%1 (%2)").arg(asText(trace.clause), standingWords(trace.standing))});
        for (const TraceLine& line : trace.lines) {
            QString row = tr("  %1 = %2  %3")
                              .arg(asText(line.symbol), showTraceValue(line.value, speech.units),
                                   asText(line.meaning));
            if (!line.source.empty()) row += tr("; %1").arg(asText(line.source));
            if (line.standing) row += tr(" (%1)").arg(standingWords(*line.standing));
            lines.append(row);
        }
        for (const std::string& outside : trace.outside)
            lines.append(tr("Outside the range: %1").arg(asText(outside)));
        for (const std::string& note : trace.notes) lines.append(asText(note));
    }
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

}  // namespace fayline
