#pragma once

#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>

#include "catalogue/catalogue.h"

namespace fayline {

inline std::string fileText(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    if (!in) throw std::runtime_error("cannot open " + path);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// The catalogue files of the source tree.
inline CatalogueTexts catalogueTexts() {
    const auto text = [](CatalogueKind kind) {
        return fileText(std::string(FAYLINE_SOURCE_DIR) + "/resources/catalogue/" +
                        std::string(catalogueFileName(kind)));
    };
    return {text(CatalogueKind::wood), text(CatalogueKind::metal), text(CatalogueKind::thread),
            text(CatalogueKind::rod),  text(CatalogueKind::nut),   text(CatalogueKind::washer),
            text(CatalogueKind::rule)};
}

/// The catalogue itself; every problem becomes one line of the error.
inline Catalogue shippedCatalogue() {
    auto catalogue = readCatalogue(catalogueTexts());
    if (catalogue) return *std::move(catalogue);
    std::string lines;
    for (const auto& problem : catalogue.error()) lines += problem.line() + "\n";
    throw std::runtime_error(lines);
}

}  // namespace fayline
