#pragma once

#include <QObject>
#include <QString>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "derive/paper.h"
#include "desk/desk.h"

class QTimer;

namespace fayline {

/// Writes every sheet into a folder, one at each turn of the event loop, so that it can be stopped
/// and nothing else waits. Works on the project as it stood at the start.
class SaveAll : public QObject {
    Q_OBJECT

  public:
    SaveAll(const Desk& desk, const PaperOptions& options, const QString& folder,
            QObject* parent = nullptr);

    void stop();
    [[nodiscard]] int count() const { return static_cast<int>(names_.size()); }
    [[nodiscard]] int written() const { return written_; }
    /// What is to be recorded of the sheets written.
    [[nodiscard]] const Typed& records() const { return records_; }

  signals:
    void progressed(int written, int count);
    /// All is written, or it was stopped; files already written stay.
    void finished(bool all);
    void failed(const QString& says);

  private:
    void next();
    bool writeList();

    Project project_;
    std::shared_ptr<const Results> results_;
    const Catalogue& catalogue_;
    std::vector<Step> steps_;
    PaperOptions options_;
    std::unique_ptr<const SheetMaker> maker_;
    QString folder_;
    std::vector<SheetName> names_;
    Typed records_;     ///< of the sheets written
    std::string list_;  ///< of sheets.csv
    int written_ = 0;
    std::size_t at_ = 0;
    QTimer* turn_;
};

}  // namespace fayline
