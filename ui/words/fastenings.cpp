#include "words/fastenings.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>
#include <algorithm>
#include <array>
#include <string_view>

#include "words/values.h"

namespace fayline {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("Fastenings", words);
}

void stack(FasteningDecisions& under, const Project& project, const std::string& key) {
    const auto found = project.fastening.find(key);
    if (found == project.fastening.end()) return;
    const FasteningDecisions& own = found->second;
    const auto over = [](auto& slot, const auto& value) {
        if (value) slot = value;
    };
    over(under.kind, own.kind);
    over(under.section, own.section);
    over(under.count, own.count);
    over(under.gauge, own.gauge);
    over(under.diameter, own.diameter);
    over(under.length, own.length);
    over(under.metal, own.metal);
    over(under.washerDiameter, own.washerDiameter);
    over(under.washerThickness, own.washerThickness);
    over(under.counterbore, own.counterbore);
}

bool hasLength(const FasteningDecisions& decided) {
    return decided.kind == "wood_screw" || decided.kind == "drift";
}

}  // namespace

FasteningDecisions standingAt(const Project& project, const std::string& group,
                              const std::string& frame, const std::string& side) {
    FasteningDecisions standing;
    stack(standing, project, group);
    if (frame.empty()) return standing;
    stack(standing, project, frame + "." + group);
    if (!side.empty()) stack(standing, project, frame + "." + side + "." + group);
    return standing;
}

QString sizeWords(const FasteningDecisions& decided, UnitSystem units) {
    if (decided.kind == "wood_screw")
        return decided.gauge ? tr("No. %1").arg(*decided.gauge) : QString();
    if (!decided.diameter) return {};
    const QString size = showSize(*decided.diameter, units);
    return decided.kind == "rivet" && decided.section == "square" ? tr("%1 square").arg(size)
                                                                  : size;
}

QString summaryWords(const FasteningDecisions& decided, UnitSystem units) {
    if (decided.count == 0) return tr("none");
    QStringList parts;
    if (decided.count) parts.append(QString::number(*decided.count));
    if (const QString size = sizeWords(decided, units); !size.isEmpty()) parts.append(size);
    if (hasLength(decided) && decided.length) parts.append(showSize(*decided.length, units));
    return parts.join(QStringLiteral(" × "));
}

std::vector<std::pair<std::string, std::string>> readSummary(const QString& typed,
                                                             const std::string& kind) {
    static const QRegularExpression between(QStringLiteral("\\s*[×x*]\\s*"));
    const QString text = typed.trimmed();
    if (text.compare(tr("none"), Qt::CaseInsensitive) == 0 || text == QLatin1String("0"))
        return {{"count", "0"}};
    const QStringList parts = text.split(between);
    if (parts.size() > 3 || parts.contains(QString())) return {};
    const bool screw = kind == "wood_screw";
    std::vector<std::pair<std::string, std::string>> read{{"count", parts[0].toStdString()}};
    if (parts.size() > 1) {
        QString size = parts[1];
        if (size.endsWith(QLatin1String("square"), Qt::CaseInsensitive)) size.chop(6);
        read.emplace_back(screw ? "gauge" : "diameter", size.trimmed().toStdString());
    }
    if (parts.size() > 2) read.emplace_back("length", parts[2].toStdString());
    return read;
}

bool matters(const std::string& field, const std::string& kind) {
    static constexpr std::array<std::string_view, 4> always = {"kind", "count", "metal", "reason"};
    if (std::find(always.begin(), always.end(), field) != always.end()) return true;
    if (kind == "wood_screw")
        return field == "gauge" || field == "length" || field == "counterbore";
    if (kind == "drift")
        return field == "diameter" || field == "length" || field == "washer_diameter" ||
               field == "washer_thickness" || field == "counterbore";
    if (kind == "bolt")
        return field == "diameter" || field == "washer_diameter" || field == "washer_thickness" ||
               field == "counterbore";
    if (kind == "rivet")
        return field == "diameter" || field == "section" || field == "washer_diameter" ||
               field == "washer_thickness" || field == "counterbore";
    return false;
}

std::vector<std::string> undecidedOf(const FasteningDecisions& decided) {
    std::vector<std::string> missing;
    if (decided.count == 0) return missing;
    if (!decided.kind) missing.emplace_back("kind");
    if (!decided.count) missing.emplace_back("count");
    if (decided.kind == "wood_screw") {
        if (!decided.gauge) missing.emplace_back("gauge");
    } else if (decided.kind && !decided.diameter) {
        missing.emplace_back("diameter");
    }
    if (hasLength(decided) && !decided.length) missing.emplace_back("length");
    if (!decided.metal) missing.emplace_back("metal");
    return missing;
}

}  // namespace fayline
