#pragma once

#include <QByteArray>
#include <QSettings>
#include <QString>
#include <QStringList>

#include "theme/theme.h"

namespace fayline {

/// $XDG_CONFIG_HOME/fayline and $XDG_STATE_HOME/fayline, or their places in the home folder.
/// Relative values are ignored, as the base directory specification asks.
QString configFolder();
QString stateFolder();

/// What the program remembers between runs: choices in the configuration folder; window, recent
/// files and the like in the state folder. A file that cannot be read gives what stands without it.
class Settings {
  public:
    static constexpr int mostRecent = 10;

    Settings(const QString& configurationFolder, const QString& stateFolder);

    [[nodiscard]] Look look() const;
    void setLook(Look look);
    [[nodiscard]] int textSize() const;
    void setTextSize(int points);

    /// Newest first.
    [[nodiscard]] QStringList recent() const;
    void addRecent(const QString& path);
    void dropRecent(const QString& path);
    void clearRecent();

    [[nodiscard]] QByteArray geometry() const;
    void setGeometry(const QByteArray& state);
    [[nodiscard]] QByteArray arrangement(const QString& page) const;
    void setArrangement(const QString& page, const QByteArray& state);

  private:
    QSettings choices_;
    QSettings state_;
};

}  // namespace fayline
