#include "bench_html.h"

#include <QCoreApplication>

#include "joint/work_joint.h"
#include "theme/colours.h"
#include "theme/status.h"
#include "words/checks.h"
#include "words/trace_values.h"
#include "working/working_text.h"

namespace fayline {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("Bench", words);
}
QString html(const QString& plain) {
    return plain.toHtmlEscaped();
}
QString html(const std::string& plain) {
    return asText(plain).toHtmlEscaped();
}
QString heading(const QString& plain, const QPalette& palette) {
    return QStringLiteral("<p style=\"margin:10px 0 4px 0;color:%1;\"><b>%2</b></p>")
        .arg(coloursFor(palette).muted.name(), html(plain));
}
QString paragraph(const QString& rich) {
    return QStringLiteral("<p style=\"margin:0 0 6px 0;\">%1</p>").arg(rich);
}
QString cell(const QString& rich) {
    return QStringLiteral("<td style=\"padding:3px 14px 3px 0;\" valign=\"top\">%1</td>").arg(rich);
}

QString stateName(LimitStateKind kind, Basis basis) {
    Check check;
    check.limitState = kind;
    check.basis = basis;
    return stateWords(check);
}

QString order(const BenchResult& worked, const BasisResult& basis, UnitSystem units) {
    QString body = QStringLiteral("<table cellspacing=\"0\">");
    int place = 0;
    for (const FirstToGo& entry : firstToGo(basis, worked.named.joint.load)) {
        body +=
            QStringLiteral("<tr>") + cell(QStringLiteral("%1.").arg(++place)) +
            cell(QStringLiteral("<b>%1</b>").arg(html(stateName(entry.kind, Basis::us)))) +
            cell(html(tr("gives at %1").arg(bandWords(entry.gives, units)))) +
            cell(html(tr("apart at %1").arg(bandWords(entry.apart, units)))) +
            cell(html(entry.soft ? tr("slowly") : tr("suddenly"))) +
            cell(entry.tooClose ? html(tr("too close to call against its neighbour")) : QString()) +
            QStringLiteral("</tr>");
    }
    return body + QStringLiteral("</table>");
}

QString size(Length length, UnitSystem units) {
    return html(displayLength(length, units == UnitSystem::inches ? LengthStyle::inchFractions
                                                                  : LengthStyle::millimetres));
}

}  // namespace

QString workingHtml(const BenchResult& worked, LimitStateKind kind, UnitSystem units,
                    const QPalette& palette) {
    QString body;
    for (const Basis basis : {Basis::us, Basis::ec5, Basis::metal}) {
        const auto trace = worked.traces.find({basis, kind});
        if (trace != worked.traces.end()) body += traceHtml(trace->second, units, palette);
        const BasisResult& from = basis == Basis::ec5 ? worked.result.ec5 : worked.result.us;
        if (basis == Basis::metal) continue;
        for (const MissingState& missing : from.missing) {
            if (missing.kind == kind)
                body += paragraph(QStringLiteral("<b>%1</b> %2")
                                      .arg(html(tr("%1: not worked out,").arg(basisWords(basis))),
                                           html(std::string(missing.why))));
        }
    }
    if (body.isEmpty()) body = paragraph(html(tr("This limit state has no working of its own.")));
    return body;
}

QString orderHtml(const BenchResult& worked, UnitSystem units, const QPalette& palette) {
    QString body;
    if (worked.named.joint.load)
        body += paragraph(html(tr("Sizes of the load given, along its own direction.")));
    body += heading(tr("US"), palette) + order(worked, worked.result.us, units);
    body += heading(tr("Eurocode 5"), palette) + order(worked, worked.result.ec5, units);
    return body;
}

QString sizesHtml(const BenchResult& worked, UnitSystem units, const QPalette& palette) {
    QString body;
    if (!worked.result.geometry.empty()) {
        body += heading(tr("Sizes"), palette) + QStringLiteral("<table cellspacing=\"0\">");
        for (const GeometryFinding& finding : worked.result.geometry) {
            QString name = asText(std::string(finding.what));
            name.replace(QLatin1Char('_'), QLatin1Char(' '));
            const Status status = finding.met ? Status::ok : Status::isShort;
            body +=
                QStringLiteral("<tr>") +
                cell(QStringLiteral("<span style=\"color:%1;\"><b>%2</b></span>")
                         .arg(statusInk(status, palette).ink.name(), html(statusWord(status)))) +
                cell(html(name)) +
                cell(tr("has %1, needs %2")
                         .arg(size(finding.has, units), size(finding.needs, units))) +
                cell(html(finding.says())) + QStringLiteral("</tr>");
        }
        body += QStringLiteral("</table>");
    }
    if (const auto& driving = worked.result.driving) {
        QString says =
            tr("The root starts to yield at %1 and twists off at %2.")
                .arg(showMoment(driving->gives, units), showMoment(driving->apart, units));
        if (driving->dry && driving->waxed)
            says += QLatin1Char(' ') +
                    tr("The last turn takes about %1 dry and %2 waxed (judgement: try it on a "
                       "scrap).")
                        .arg(showMoment(*driving->dry, units), showMoment(*driving->waxed, units));
        body += heading(tr("Driving"), palette) + paragraph(html(says));
    }
    const auto cautions = jointCautions(worked.named.joint);
    if (!cautions.empty()) body += heading(tr("Take care"), palette);
    for (const std::string& caution : cautions) body += paragraph(html(caution));
    if (body.isEmpty())
        body = paragraph(html(tr("Nothing is said about sizes of this kind of fastening.")));
    return body;
}

QString moistureHtml(const BenchResult& worked, UnitSystem units, const QPalette& palette) {
    QString body = heading(tr("What it can carry in each state, %1 zone")
                               .arg(asText(std::string(nameOf(worked.named.zone)))),
                           palette);
    body += QStringLiteral("<table cellspacing=\"0\"><tr><td></td><td></td>");
    const QString states[] = {tr("as fitted"), tr("dried in the shed"), tr("afloat"),
                              tr("winter ashore")};
    for (const QString& each : states) body += cell(QStringLiteral("<b>%1</b>").arg(html(each)));
    body += cell(QStringLiteral("<b>%1</b>").arg(html(tr("governs")))) + QStringLiteral("</tr>");
    for (const MoistureRow& row : worked.moisture) {
        body += QStringLiteral("<tr>") + cell(html(stateName(row.kind, row.basis))) +
                cell(html(basisWords(row.basis)));
        for (const Force force : row.working) body += cell(html(displayForce(force, units)));
        body += cell(html(states[static_cast<std::size_t>(row.governs)])) + QStringLiteral("</tr>");
    }
    return body + QStringLiteral("</table>");
}

}  // namespace fayline
