#pragma once

#include <QFont>
#include <QObject>
#include <QPalette>

class QApplication;

namespace fayline {

enum class Look { system, light, dark };

/// The look of the whole program: style, palette, font. Made once, before any window.
class Theme : public QObject {
    Q_OBJECT

  public:
    explicit Theme(QApplication& application);

    [[nodiscard]] Look look() const { return look_; }
    void setLook(Look look);

    /// Points; 9 unless the user wants larger text. Kept between 8 and 20.
    [[nodiscard]] int textSize() const { return textSize_; }
    void setTextSize(int points);

  private:
    void apply();

    QApplication& application_;
    bool desktopIsDark_;
    Look look_ = Look::system;
    int textSize_ = 9;
};

}  // namespace fayline
