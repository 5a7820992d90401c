#pragma once

#include <QString>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "catalogue/catalogue.h"
#include "derive/record.h"
#include "project/step.h"
#include "quantity/result.h"

class QApplication;

namespace fayline {

/// What the window is given by the program around it.
struct WindowServices {
    std::shared_ptr<const Catalogue> catalogue;
    std::string program;               ///< "fayline 0.1.0"
    std::string who;                   ///< stands beside every decision
    std::function<std::string()> now;  ///< UTC, ISO 8601
    /// The steps a new project begins with: none decided, from a table of offsets, and the demo
    /// hull.
    std::function<ResultAll<std::vector<Step>>()> blank;
    std::function<ResultAll<std::vector<Step>>(const std::filesystem::path& offsets)> fromOffsets;
    std::function<ResultAll<std::vector<Step>>()> demo;
    /// Reads the text of a joint file; `name` stands in what is wrong with it.
    std::function<ResultAll<NamedJoint>(const std::string& text, const std::string& name)>
        readJoint;
};

/// Shows the main window until it is closed; returns the program's exit code.
int runWindow(QApplication& application, const std::optional<QString>& fileToOpen,
              WindowServices services);

}  // namespace fayline
