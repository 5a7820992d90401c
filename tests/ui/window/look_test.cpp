#include <QAbstractButton>
#include <QFile>
#include <QLabel>
#include <QPushButton>

#include "theme/colours.h"
#include "window/pictures.h"
#include "window_fixture.h"

namespace fayline {
namespace {

using Window = test::WindowTest;

/// Texts that do not fit the room they have been given.
QStringList clipped(QWidget& window) {
    QStringList found;
    for (const auto* label : window.findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty()) continue;
        const int needed =
            label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
        if (label->height() < needed ||
            (!label->wordWrap() && label->width() < label->sizeHint().width()))
            found.append(label->text());
    }
    for (const auto* button : window.findChildren<QPushButton*>()) {
        if (button->isVisible() && (button->width() < button->sizeHint().width() ||
                                    button->height() < button->sizeHint().height()))
            found.append(button->text());
    }
    return found;
}

TEST_F(Window, noTextIsCutAtAnySize) {
    openDemo();
    for (const int points : {9, 12, 18}) {
        theme.setTextSize(points);
        window.resize(1700, 1000);
        for (const auto page :
             {MainWindow::hullPage, MainWindow::stationsPage, MainWindow::marginsPage,
              MainWindow::sheetsPage, MainWindow::metalPage}) {
            window.showPage(page);
            for (int i = 0; i < 3; ++i) QCoreApplication::processEvents();
            EXPECT_EQ(clipped(window), QStringList()) << points << " points, page " << page;
        }
    }
    theme.setTextSize(9);
}

TEST_F(Window, lightAndDarkSwitchWhileRunning) {
    openDemo();
    theme.setLook(Look::light);
    const QImage light = window.grab().toImage();
    action(QStringLiteral("Dark"))->trigger();
    EXPECT_EQ(settings.look(), Look::dark);
    for (int i = 0; i < 3; ++i) QCoreApplication::processEvents();
    const QImage dark = window.grab().toImage();
    int lightPixels = 0;
    int left = 0;
    for (int y = 0; y < dark.height(); y += 3) {
        for (int x = 0; x < dark.width(); x += 3) {
            lightPixels += light.pixelColor(x, y).lightness() > 200 ? 1 : 0;
            left += dark.pixelColor(x, y).lightness() > 200 ? 1 : 0;
        }
    }
    EXPECT_GT(lightPixels, 10000);
    EXPECT_LT(left, lightPixels / 20) << "no pane stayed light";
    theme.setLook(Look::light);
}

TEST_F(Window, geometryAndColumnsComeBack) {
    openDemo();
    window.resize(1111, 777);
    window.close();
    MainWindow again(test::services(), settings, theme);
    EXPECT_EQ(again.size(), QSize(1111, 777));
}

TEST(SettingsTest, damagedFilesGiveDefaults) {
    const QTemporaryDir folder;
    for (const char* name : {"fayline.ini", "window.ini"}) {
        QFile file(folder.filePath(QString::fromLatin1(name)));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(QByteArray(
            "\x00\xff[look\nlook=purple\ntext_size=900\nrecent=\x01\ngeometry=@ByteArray(x)", 60));
    }
    Settings settings(folder.path(), folder.path());
    EXPECT_EQ(settings.look(), Look::system);
    EXPECT_EQ(settings.textSize(), 9);
    Theme theme(*qApp);
    MainWindow window(test::services(), settings, theme);
    EXPECT_GT(window.width(), 500);
}

TEST(SettingsTest, followTheBaseDirectories) {
    const QTemporaryDir folder;
    qputenv("XDG_CONFIG_HOME", folder.path().toLocal8Bit());
    qputenv("XDG_STATE_HOME", "relative/is/ignored");
    EXPECT_EQ(configFolder(), folder.path() + QStringLiteral("/fayline"));
    EXPECT_TRUE(stateFolder().endsWith(QStringLiteral(".local/state/fayline")));
    qunsetenv("XDG_CONFIG_HOME");
    EXPECT_TRUE(configFolder().endsWith(QStringLiteral(".config/fayline")));
    qunsetenv("XDG_STATE_HOME");
}

TEST(PicturesTest, showTheRealWindowAndSayWhatIsWrong) {
    const test::DemoFile file;
    const QString picture = file.folder() + QStringLiteral("/stations.png");
    PictureWish wish;
    wish.project = file.path();
    wish.picture = picture;
    wish.frame = QStringLiteral("F20");
    wish.working = true;
    ASSERT_TRUE(savePictures(*qApp, test::services(), {wish}));
    const QImage image(picture);
    EXPECT_EQ(image.deviceIndependentSize().toSize() * image.devicePixelRatio(), image.size());
    EXPECT_GE(image.width(), 1360);
    wish.frame = QStringLiteral("F99");
    const auto none = savePictures(*qApp, test::services(), {wish});
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().where, "F99");
    wish.project = QStringLiteral("none.fayline");
    EXPECT_FALSE(savePictures(*qApp, test::services(), {wish}));
}

}  // namespace
}  // namespace fayline
