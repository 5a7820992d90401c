#include <QDateTime>
#include <QLocale>

#include "desk/desk.h"

namespace fayline {

QString clockText(const std::string& utc, const std::string& today) {
    const auto local = [](const std::string& text) {
        return QDateTime::fromString(QString::fromStdString(text), Qt::ISODate).toLocalTime();
    };
    const QDateTime time = local(utc);
    if (!time.isValid()) return {};
    const QString clock = time.toString(QStringLiteral("HH:mm"));
    if (time.date() == local(today).date()) return clock;
    return QLocale(QLocale::English).toString(time.date(), QStringLiteral("d MMM yyyy")) +
           QLatin1Char(' ') + clock;
}

}  // namespace fayline
