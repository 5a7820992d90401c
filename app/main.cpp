#include <QCoreApplication>
#include <iostream>

#include "cli.h"

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
    const QCoreApplication application(argc, argv);
    return fayline::cli::runCommandLine(words, std::cout, std::cerr);
}
