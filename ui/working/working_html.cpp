#include <QCoreApplication>
#include <QStringList>

#include "theme/colours.h"
#include "theme/status.h"
#include "words/checks.h"
#include "words/trace_values.h"
#include "working/working_text.h"

namespace fayline {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("Working", words);
}
QString html(const QString& plain) {
    return plain.toHtmlEscaped();
}
QString html(const std::string& plain) {
    return asText(plain).toHtmlEscaped();
}

struct Page {
    const Speech& speech;
    const QPalette& palette;
    QString muted, line, body;

    Page(const Speech& s, const QPalette& p)
        : speech(s),
          palette(p),
          muted(coloursFor(p).muted.name()),
          line(coloursFor(p).line.name()) {}

    void paragraph(const QString& rich, const QString& style = {}) {
        body += QStringLiteral("<p style=\"margin:0 0 6px 0;%1\">%2</p>").arg(style, rich);
    }
    void heading(const QString& plain) {
        body += QStringLiteral("<p style=\"margin:14px 0 4px 0;color:%1;\"><b>%2</b></p>")
                    .arg(muted, html(plain));
    }
    [[nodiscard]] QString ink(Status status) const { return statusInk(status, palette).ink.name(); }
    [[nodiscard]] QString badge(Standing standing) const {
        const Status status = standing == Standing::fromMemory || standing == Standing::judgement
                                  ? Status::near
                                  : Status::unknown;
        return QStringLiteral("<span style=\"background-color:%1;\">&nbsp;%2&nbsp;</span>")
            .arg(statusInk(status, palette).fill.name(), html(standingWords(standing)));
    }
    [[nodiscard]] QString cell(const QString& rich, const QString& extra = {}) const {
        return QStringLiteral("<td style=\"padding:3px 10px 3px 0;%1\" valign=\"top\">%2</td>")
            .arg(extra, rich);
    }
};

QString force(const std::optional<Force>& value, UnitSystem units) {
    return value ? html(displayForce(*value, units)) : html(tr("not known"));
}
QString band(const std::optional<Band>& value, UnitSystem units) {
    if (!value) return html(tr("no source"));
    if (value->low == value->high) return html(displayForce(value->low, units));
    return html(tr("%1 to %2")
                    .arg(asText(displayForce(value->low, units)),
                         asText(displayForce(value->high, units))));
}

void verdict(Page& page, const Check& check) {
    page.body += QStringLiteral(
                     "<p style=\"margin:0 0 2px 0;color:%1;\"><span "
                     "style=\"font-size:x-large;\"><b>%2</b></span> &nbsp;<b>%3</b></p>")
                     .arg(page.ink(check.status), html(marginWords(check)),
                          html(check.margin ? statusWord(check.status) : QString()));
    page.paragraph(html(asText(titleOf(check.loadCase))),
                   QStringLiteral("color:%1;").arg(page.muted));
    page.paragraph(html(plainSentence(check, page.speech.units)));
    if (check.working)
        page.paragraph(html(check.soft ? tr("It would give slowly, with warning.")
                                       : tr("It would go suddenly, without warning.")));
    for (const std::string& outside : check.outside)
        page.paragraph(QStringLiteral("<b>%1</b>")
                           .arg(html(tr("Outside the range: %1").arg(asText(outside)))));
}

void bases(Page& page, const Working& working) {
    std::vector<const Check*> sides{&working.check};
    if (working.other) sides.push_back(&*working.other);
    if (sides.size() == 2 && sides[0]->basis == Basis::ec5) std::swap(sides[0], sides[1]);
    page.heading(sides.size() == 2 ? tr("Both timber bases") : tr("The figures"));
    const auto row = [&](const QString& name, auto value) {
        page.body += QStringLiteral("<tr>") +
                     page.cell(html(name), QStringLiteral("color:%1;").arg(page.muted));
        for (const Check* side : sides) page.body += page.cell(value(*side));
        page.body += QStringLiteral("</tr>");
    };
    const UnitSystem units = page.speech.units;
    page.body += QStringLiteral("<table cellspacing=\"0\">");
    if (sides.size() == 2) {
        row({}, [&](const Check& c) {
            const QString leads = c.basis == page.speech.basis
                                      ? tr("%1 (leads)").arg(basisWords(c.basis))
                                      : basisWords(c.basis);
            return QStringLiteral("<b>%1</b>").arg(html(leads));
        });
    }
    row(tr("margin"), [&](const Check& c) {
        return QStringLiteral("<span style=\"color:%1;\"><b>%2</b> %3</span>")
            .arg(page.ink(c.status), html(marginWords(c)),
                 html(c.margin ? statusWord(c.status) : QString()));
    });
    row(tr("must carry"), [&](const Check& c) { return force(c.demand, units); });
    row(tr("can carry"), [&](const Check& c) { return force(c.working, units); });
    row(tr("starts to give"), [&](const Check& c) { return band(c.gives, units); });
    row(tr("comes apart"), [&](const Check& c) { return band(c.apart, units); });
    row(tr("clause"), [&](const Check& c) { return html(c.clause); });
    row(tr("standing"), [&](const Check& c) { return page.badge(c.standing); });
    page.body += QStringLiteral("</table>");
    if (working.check.basis == Basis::metal)
        page.paragraph(html(tr("Metal is worked out alike under either timber basis.")),
                       QStringLiteral("color:%1;").arg(page.muted));
}

void figures(Page& page, const Trace& trace) {
    page.heading(asText(trace.title));
    page.paragraph(QStringLiteral("<b>%1</b>").arg(html(trace.formula)));
    page.paragraph(html(trace.clause) + QStringLiteral(" &nbsp;") + page.badge(trace.standing));
    page.body += QStringLiteral("<table cellspacing=\"0\" width=\"100%\">");
    for (const TraceLine& line : trace.lines) {
        QString meaning = html(line.meaning);
        if (!line.source.empty())
            meaning += QStringLiteral("<br><span style=\"color:%1;\">%2</span>")
                           .arg(page.muted, html(line.source));
        if (line.standing) meaning += QStringLiteral(" ") + page.badge(*line.standing);
        page.body += QStringLiteral("<tr>") + page.cell(html(line.symbol)) +
                     page.cell(QStringLiteral("<b>%1</b>")
                                   .arg(html(showTraceValue(line.value, page.speech.units))),
                               QStringLiteral("white-space:nowrap;")) +
                     page.cell(meaning) + QStringLiteral("</tr>");
    }
    page.body += QStringLiteral("</table>");
    for (const std::string& outside : trace.outside)
        page.paragraph(QStringLiteral("<b>%1</b>")
                           .arg(html(tr("Outside the range: %1").arg(asText(outside)))));
    for (const std::string& note : trace.notes)
        page.paragraph(html(note), QStringLiteral("color:%1;").arg(page.muted));
}

void otherChecks(Page& page, const Working& working) {
    if (working.others.empty()) return;
    page.heading(tr("What else is checked of it, worst first"));
    page.body += QStringLiteral("<table cellspacing=\"0\">");
    for (std::size_t i = 0; i < working.others.size(); ++i) {
        const Check& check = *working.others[i];
        const QString words =
            tr("%1, %2, %3")
                .arg(stateWords(check), asText(titleOf(check.loadCase)), basisWords(check.basis));
        page.body +=
            QStringLiteral("<tr>") +
            page.cell(QStringLiteral("<span style=\"color:%1;\"><b>%2</b></span>")
                          .arg(page.ink(check.status), html(marginWords(check)))) +
            page.cell(html(check.margin ? statusWord(check.status) : QString())) +
            page.cell(QStringLiteral("<a href=\"check:%1\">%2</a>").arg(i).arg(html(words))) +
            QStringLiteral("</tr>");
    }
    page.body += QStringLiteral("</table>");
}

}  // namespace

QString traceHtml(const Trace& trace, UnitSystem units, const QPalette& palette) {
    const Speech speech{units, Basis::us};
    Page page(speech, palette);
    figures(page, trace);
    return page.body;
}

QString workingHtml(const Working& working, const Speech& speech, const QPalette& palette) {
    Page page(speech, palette);
    verdict(page, working.check);
    bases(page, working);
    if (working.trace) figures(page, *working.trace);
    otherChecks(page, working);
    return page.body;
}

}  // namespace fayline
