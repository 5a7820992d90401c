#pragma once

#include <QLineEdit>
#include <QStringList>

namespace fayline {

/// The field in which one cell is typed. Choices complete as they are typed; Alt+Down lists them. A
/// text that is not taken is outlined and its sentence stands below.
class CellEditor : public QLineEdit {
    Q_OBJECT

  public:
    CellEditor(const QStringList& choices, QWidget* parent);

    /// What it was opened with; left as it is, it decides nothing.
    void seed(const QString& text);
    [[nodiscard]] bool isSeeded() const { return seeded_; }
    [[nodiscard]] bool isTouched() const { return text() != seed_; }

    void showObjection(const QString& says);
    [[nodiscard]] const QString& objection() const { return objection_; }
    [[nodiscard]] bool isListing() const { return listing_; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void listChoices();
    void grow();

    QStringList choices_;
    QString seed_, objection_;
    bool seeded_ = false;
    bool listing_ = false;
};

}  // namespace fayline
