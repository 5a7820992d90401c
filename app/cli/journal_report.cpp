#include <nlohmann/json.hpp>

#include "json.h"
#include "reports.h"

namespace fayline::cli {
namespace {

Json textOrNull(const std::optional<std::string>& text) {
    return text ? Json(*text) : Json(nullptr);
}
Json stepOrNull(const std::optional<std::int64_t>& step) {
    return step ? Json(*step) : Json(nullptr);
}

Json stepJson(const Step& step) {
    Json json;
    json["step"] = step.number;
    json["at"] = step.at;
    json["who"] = step.who;
    json["why"] = step.why;
    json["title"] = step.title;
    json["kind"] = stepKindName(step.kind);
    json["target"] = stepOrNull(step.target);
    json["changes"] = Json::array();
    for (const Change& change : step.changes) {
        json["changes"].push_back({{"what", change.what},
                                   {"old", textOrNull(change.oldText)},
                                   {"new", textOrNull(change.newText)}});
    }
    json["hash"] = step.hash;
    return json;
}

}  // namespace

std::string journalJson(const Session& session) {
    Json json = jsonHead("fayline.journal/1", &session);
    json["steps"] = Json::array();
    for (const Step& step : session.journal().steps()) json["steps"].push_back(stepJson(step));
    json["undo"] = stepOrNull(session.journal().nextUndo());
    json["redo"] = stepOrNull(session.journal().nextRedo());
    addCautions(json, session.results.get());
    return jsonText(json);
}

std::string journalText(const Session& session) {
    std::string text;
    for (const Step& step : session.journal().steps()) {
        text += std::to_string(step.number) + "  " + step.at + "  " + step.who + "  " +
                std::string(stepKindName(step.kind)) + "  " + step.title;
        if (!step.why.empty()) text += "  — " + step.why;
        text += "\n";
    }
    if (const auto undo = session.journal().nextUndo())
        text += "undo takes back step " + std::to_string(*undo) + ": " +
                session.journal().nextUndoTitle() + "\n";
    if (const auto redo = session.journal().nextRedo())
        text += "redo brings back step " + std::to_string(*redo) + ": " +
                session.journal().nextRedoTitle() + "\n";
    return text;
}

std::string verifyJson(const VerifyResult& verified) {
    Json json = jsonHead("fayline.verify/1", nullptr);
    json["outcome"] = fileOutcomeName(verified.outcome);
    json["step"] = verified.step;
    json["first_bad_step"] = stepOrNull(verified.firstBadStep);
    json["says"] = cli::textOrNull(verified.says);
    addCautions(json, nullptr);
    return jsonText(json);
}

std::string verifyText(const std::filesystem::path& path, const VerifyResult& verified) {
    std::string text = path.string() + ": " + std::string(fileOutcomeName(verified.outcome)) +
                       ", last good step " + std::to_string(verified.step);
    if (verified.firstBadStep) text += ", first bad step " + std::to_string(*verified.firstBadStep);
    if (!verified.says.empty()) text += "\n" + verified.says;
    return text + "\n";
}

}  // namespace fayline::cli
