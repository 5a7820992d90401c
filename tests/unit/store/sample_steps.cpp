#include "sample_steps.h"

namespace fayline::test {

Step nextStep(const Journal& journal) {
    const StepBy by{"Ada L\xC3\xB6vgren", journal.tip() % 3 == 0 ? "as measured" : "",
                    "2026-11-25T10:42:07Z"};
    const std::string count = std::to_string(journal.tip());
    const std::int64_t turn = journal.tip() % 11;
    if (turn == 4 && journal.nextUndo()) return journal.prepareUndo(by).value();
    if (turn == 5 && journal.nextRedo()) return journal.prepareRedo(by).value();
    if (turn == 7)
        return journal.prepareRecord({{"F9.P.heel.2.drilled", count}}, "drilled", by).value();
    if (turn == 9) return journal.prepareNote("\xEF\xBB\xBFseen, " + count, by).value();
    const std::string place = "F" + std::to_string(journal.tip() % 40 + 1);
    return journal
        .prepareDecide(
            {{place + ".heel.gauge", "No. " + count},
             {place + ".heel.reason", turn == 1 ? "" : "\xE2\x8C\x80 5/16\xE2\x80\xB3 " + count},
             {"hull.name", turn == 2 ? std::nullopt : std::optional("Gannet " + count)}},
            "heel screws of " + place, by)
        .value();
}

Journal journalOf(std::int64_t steps) {
    Journal journal;
    while (journal.tip() < steps && journal.append(nextStep(journal))) {
    }
    return journal;
}

}  // namespace fayline::test
