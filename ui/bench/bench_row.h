#pragma once

#include <QComboBox>
#include <QWidget>
#include <functional>

#include "bench_fields.h"

class QLabel;
class QLineEdit;

namespace fayline {

/// One field of the panel: label, entry, unit, and below it in one sentence why an entry was not
/// taken or what is still needed. An entry that is not taken stays to be seen.
class BenchRow : public QWidget {
    Q_OBJECT

  public:
    /// `path` is its place in the joint: "members[0].thickness", "fastener.kind".
    BenchRow(const BenchField& field, std::string path, const Catalogue& catalogue,
             QWidget* parent = nullptr);
    ~BenchRow() override;

    [[nodiscard]] const std::string& path() const { return path_; }
    [[nodiscard]] const BenchField& field() const { return field_; }
    [[nodiscard]] QLineEdit* entry() const { return entry_; }
    [[nodiscard]] QString objection() const;

    /// Shows what stands, unless something is being typed or was not taken.
    void follow(const std::string& standing, UnitSystem units, const QString& rule);
    /// Says why, in the colour of what is refused; empty: all is well.
    void object(const QString& says);
    /// Shows what stands whatever was typed.
    void revert();
    [[nodiscard]] bool isTouched() const;
    /// Ends typing: tells finished() if something was typed.
    void settle();

  signals:
    /// While typing, after each letter; the text as the joint file wants it.
    void typed(const std::string& text);
    /// The entry was ended; to be taken or refused.
    void finished(const std::string& text);
    /// Escape: what was typed is not meant.
    void abandoned();

  protected:
    bool eventFilter(QObject* object, QEvent* event) override;

  private:
    [[nodiscard]] std::string text() const;

    BenchField field_;
    std::string path_;
    const Catalogue& catalogue_;
    UnitSystem units_ = UnitSystem::inches;
    QLabel* label_;
    QLineEdit* entry_ = nullptr;
    QComboBox* box_ = nullptr;
    QLabel* unit_;
    QLabel* below_;
    QString shown_;
};

}  // namespace fayline
