#include "settings.h"

#include <QDir>

namespace fayline {
namespace {

/// Of the arrangement of panes and columns; others are not restored.
constexpr int arrangementVersion = 1;

QString folder(const char* variable, const QString& otherwise) {
    const QString set = qEnvironmentVariable(variable);
    const QString base = QDir::isAbsolutePath(set) ? set : QDir::home().filePath(otherwise);
    return QDir(base).filePath(QStringLiteral("fayline"));
}

QString key(const QString& page) {
    return QStringLiteral("arrangement%1/%2").arg(arrangementVersion).arg(page);
}

}  // namespace

QString configFolder() {
    return folder("XDG_CONFIG_HOME", QStringLiteral(".config"));
}
QString stateFolder() {
    return folder("XDG_STATE_HOME", QStringLiteral(".local/state"));
}

Settings::Settings(const QString& configurationFolder, const QString& stateFolder)
    : choices_(QDir(configurationFolder).filePath(QStringLiteral("fayline.ini")),
               QSettings::IniFormat),
      state_(QDir(stateFolder).filePath(QStringLiteral("window.ini")), QSettings::IniFormat) {}

Look Settings::look() const {
    const QString name = choices_.value(QStringLiteral("look")).toString();
    if (name == QLatin1String("light")) return Look::light;
    if (name == QLatin1String("dark")) return Look::dark;
    return Look::system;
}

void Settings::setLook(Look look) {
    const QString name = look == Look::light  ? QStringLiteral("light")
                         : look == Look::dark ? QStringLiteral("dark")
                                              : QStringLiteral("system");
    choices_.setValue(QStringLiteral("look"), name);
}

int Settings::textSize() const {
    bool read = false;
    const int size = choices_.value(QStringLiteral("text_size")).toInt(&read);
    return read && size >= 8 && size <= 20 ? size : 9;
}

void Settings::setTextSize(int points) {
    choices_.setValue(QStringLiteral("text_size"), points);
}

QStringList Settings::recent() const {
    return state_.value(QStringLiteral("recent")).toStringList().mid(0, mostRecent);
}

void Settings::addRecent(const QString& path) {
    QStringList all = recent();
    all.removeAll(path);
    all.prepend(path);
    state_.setValue(QStringLiteral("recent"), QStringList(all.mid(0, mostRecent)));
}

void Settings::dropRecent(const QString& path) {
    QStringList all = recent();
    all.removeAll(path);
    state_.setValue(QStringLiteral("recent"), all);
}

void Settings::clearRecent() {
    state_.remove(QStringLiteral("recent"));
}

QByteArray Settings::geometry() const {
    return state_.value(QStringLiteral("geometry")).toByteArray();
}
void Settings::setGeometry(const QByteArray& state) {
    state_.setValue(QStringLiteral("geometry"), state);
}
QByteArray Settings::arrangement(const QString& page) const {
    return state_.value(key(page)).toByteArray();
}
void Settings::setArrangement(const QString& page, const QByteArray& state) {
    state_.setValue(key(page), state);
}

}  // namespace fayline
