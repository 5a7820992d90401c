#include <gtest/gtest.h>

#include <QThread>

namespace {

/// Qt takes the first thread that uses it for the main thread and never frees what it keeps about
/// it. Were that the store's own thread, every test would seem to leak.
class QtMainThread : public testing::Environment {
    void SetUp() override { ASSERT_NE(QThread::currentThread(), nullptr); }
};

const auto* const registered = testing::AddGlobalTestEnvironment(new QtMainThread);

}  // namespace
