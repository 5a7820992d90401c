#include "words/things.h"

#include <QCoreApplication>
#include <QStringList>
#include <array>
#include <utility>

#include "words/values.h"

namespace fayline {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("Things", words);
}

struct GroupNames {
    const char* group;
    const char* many;  ///< of the whole group
    const char* one;   ///< of one fastening in it
    const char* brief;
};
constexpr std::array<GroupNames, 9> groups = {{
    {"heel", QT_TRANSLATE_NOOP("Things", "Heels"), QT_TRANSLATE_NOOP("Things", "Heel fastening"),
     QT_TRANSLATE_NOOP("Things", "heel")},
    {"arm", QT_TRANSLATE_NOOP("Things", "Floor arms"), QT_TRANSLATE_NOOP("Things", "Arm fastening"),
     QT_TRANSLATE_NOOP("Things", "arm")},
    {"floor", QT_TRANSLATE_NOOP("Things", "Floor to keel"),
     QT_TRANSLATE_NOOP("Things", "Floor-to-keel fastening"),
     QT_TRANSLATE_NOOP("Things", "to keel")},
    {"ballast", QT_TRANSLATE_NOOP("Things", "Ballast bolts"),
     QT_TRANSLATE_NOOP("Things", "Ballast bolt"), QT_TRANSLATE_NOOP("Things", "bolt")},
    {"plank", QT_TRANSLATE_NOOP("Things", "Planks"), QT_TRANSLATE_NOOP("Things", "Plank fastening"),
     QT_TRANSLATE_NOOP("Things", "plank")},
    {"butt", QT_TRANSLATE_NOOP("Things", "Butts"), QT_TRANSLATE_NOOP("Things", "Butt fastening"),
     QT_TRANSLATE_NOOP("Things", "butt")},
    {"hood", QT_TRANSLATE_NOOP("Things", "Hood ends"),
     QT_TRANSLATE_NOOP("Things", "Hood end fastening"), QT_TRANSLATE_NOOP("Things", "hood")},
    {"garboard", QT_TRANSLATE_NOOP("Things", "Garboards"),
     QT_TRANSLATE_NOOP("Things", "Garboard fastening"), QT_TRANSLATE_NOOP("Things", "garboard")},
    {"backbone", QT_TRANSLATE_NOOP("Things", "Backbone"),
     QT_TRANSLATE_NOOP("Things", "Backbone fastening"), QT_TRANSLATE_NOOP("Things", "backbone")},
}};

const GroupNames* namesOf(const QString& group) {
    const QString wanted = group == QLatin1String("floor_bolt") ? QStringLiteral("floor") : group;
    for (const GroupNames& names : groups) {
        if (wanted == QLatin1String(names.group)) return &names;
    }
    return nullptr;
}

/// An id taken apart: place, side, group and number.
struct Parts {
    QString place, side, group, number;
};

bool isNumber(const QString& text) {
    bool number = false;
    text.toInt(&number);
    return number;
}

Parts partsOf(const QString& id) {
    QStringList tokens = id.split(QLatin1Char('.'));
    Parts parts;
    parts.place = tokens.takeFirst();
    if (!tokens.isEmpty() &&
        (tokens.front() == QLatin1String("P") || tokens.front() == QLatin1String("S")))
        parts.side = tokens.takeFirst();
    if (!tokens.isEmpty() && !isNumber(tokens.front())) parts.group = tokens.takeFirst();
    parts.number = tokens.join(QLatin1Char('.'));
    return parts;
}

QString sideWords(const QString& side) {
    return side == QLatin1String("P") ? tr("port") : tr("starboard");
}

QString readable(QString name) {
    name.replace(QLatin1Char('_'), QLatin1Char(' '));
    if (!name.isEmpty()) name[0] = name[0].toUpper();
    return name;
}

bool isFrame(const QString& place) {
    return place.size() > 1 && place[0] == QLatin1Char('F') && place[1].isDigit();
}

QString atFrame(const Parts& parts) {
    return parts.side.isEmpty() ? parts.place
                                : tr("%1, %2").arg(parts.place, sideWords(parts.side));
}

QString frameTitle(const Parts& parts, const QString& id) {
    if (parts.group.isEmpty()) return tr("Frame %1").arg(atFrame(parts));
    if (parts.group == QLatin1String("floor") && parts.number.isEmpty())
        return tr("Floor timber at %1").arg(parts.place);
    const GroupNames* names = namesOf(parts.group);
    if (names == nullptr) return id;
    if (parts.number.isEmpty()) return tr("%1 at %2").arg(tr(names->many), atFrame(parts));
    const qsizetype dot = parts.number.indexOf(QLatin1Char('.'));
    if (dot < 0) return tr("%1 %2 at %3").arg(tr(names->one), parts.number, atFrame(parts));
    return tr("%1 %2 in strake %3 at %4")
        .arg(tr(names->one), parts.number.mid(dot + 1), parts.number.left(dot), atFrame(parts));
}

}  // namespace

QString groupWords(const std::string& group) {
    const GroupNames* names = namesOf(asText(group));
    return names == nullptr ? readable(asText(group)) : tr(names->many);
}

QString thingTitle(const std::string& id) {
    const QString text = asText(id);
    if (text.isEmpty()) return text;
    if (text == QLatin1String("keel")) return tr("Keel timber on the ballast");
    const Parts parts = partsOf(text);
    if (parts.place == QLatin1String("K")) return tr("Ballast bolt %1").arg(text);
    if (parts.place == QLatin1String("B"))
        return tr("%1, fastening %2").arg(readable(parts.group), parts.number);
    if (isFrame(parts.place)) return frameTitle(parts, text);
    const GroupNames* names = namesOf(parts.group);
    if (names == nullptr) return readable(text);
    QString place = readable(parts.place);
    if (!parts.side.isEmpty()) place += QStringLiteral(", ") + sideWords(parts.side);
    return parts.number.isEmpty() ? tr("%1 of %2").arg(tr(names->many), place)
                                  : tr("%1 %2 of %3").arg(tr(names->one), parts.number, place);
}

QString thingWithin(const std::string& id) {
    const Parts parts = partsOf(asText(id));
    if (!isFrame(parts.place) || parts.number.isEmpty()) return thingTitle(id);
    const qsizetype dot = parts.number.indexOf(QLatin1Char('.'));
    const QString which = dot < 0 ? tr("fastening %1").arg(parts.number)
                                  : tr("strake %1").arg(parts.number.left(dot));
    return parts.side.isEmpty() ? which : sideWords(parts.side) + QStringLiteral(", ") + which;
}

QString thingShort(const std::string& id) {
    const QString text = asText(id);
    if (text == QLatin1String("keel")) return tr("keel");
    const Parts parts = partsOf(text);
    if (!isFrame(parts.place)) return text;
    if (parts.group.isEmpty()) return tr("frame %1").arg(parts.side).trimmed();
    if (parts.group == QLatin1String("floor") && parts.number.isEmpty()) return tr("floor");
    const GroupNames* names = namesOf(parts.group);
    if (names == nullptr) return text;
    return tr("%1 %2").arg(tr(names->brief), parts.side + parts.number).trimmed();
}

QString kindWords(const std::string& kind) {
    QString words = asText(kind);
    return words.replace(QLatin1Char('_'), QLatin1Char(' '));
}

}  // namespace fayline
