#pragma once

#include <QString>
#include <QTemporaryDir>
#include <memory>

#include "desk/desk.h"
#include "window/run.h"

namespace fayline::test {

std::shared_ptr<const Catalogue> catalogue();

/// The services the program gives its window; the clock stands still at 2026-11-25 10:42:07.
WindowServices services();
DeskSetup deskSetup();

/// The demo hull with her ballast decided, nothing else, in a folder of its own.
class DemoFile {
  public:
    DemoFile();
    [[nodiscard]] QString path() const {
        return folder_.filePath(QStringLiteral("hollin.fayline"));
    }
    [[nodiscard]] QString folder() const { return folder_.path(); }

  private:
    QTemporaryDir folder_;
};

/// What a builder would decide for every group of fastenings of the demo hull: name and text.
Typed everyGroup();
/// Decides that in a project file that nobody has open.
void decideFastenings(const QString& path);

/// The text decided now; "" where the rule stands.
QString decided(const Desk& desk, const char* what);

}  // namespace fayline::test
