#include "unit/view/qt_application.h"
#include "view/plan/replanner.h"

#include <gtest/gtest.h>

#include <atomic>

using namespace bastewright;
using namespace bastewright::literals;

namespace {

Session named(const std::string& name) {
    Session session;
    session.jobs.emplace_back().name = name;
    return session;
}

TEST(Replanner, GivesThePlanFirstAndWhatWouldHelpAfterwards) {
    needApplication();
    Replanner replanner{[](const Session&, bool help, std::stop_token) {
        Plan plan;
        plan.help.resize(help ? 1 : 0);
        return plan;
    }};
    QList<std::size_t> helps;
    QObject::connect(&replanner, &Replanner::planned,
                     [&](const PlannedPtr& p) { helps << p->plan.help.size(); });
    replanner.request(named("A"));
    EXPECT_TRUE(helps.isEmpty()) << "planned on the caller's time";
    ASSERT_TRUE(comes([&] { return helps.size() == 2; }));
    EXPECT_EQ(helps, (QList<std::size_t>{0, 1}));
}

TEST(Replanner, TheNewestRequestWinsAndTheOldSearchIsStopped) {
    needApplication();
    std::atomic stopped = 0, started = 0;
    Replanner replanner{[&](const Session& session, bool, std::stop_token stop) {
        ++started;
        if (session.jobs.front().name == "slow")
            while (!stop.stop_requested())
                std::this_thread::yield();
        stopped += stop.stop_requested();
        return Plan{};
    }};
    QStringList names;
    QObject::connect(&replanner, &Replanner::planned, [&](const PlannedPtr& p) {
        names << QString::fromStdString(p->session.jobs.front().name);
    });
    replanner.request(named("slow"));
    ASSERT_TRUE(comes([&] { return started == 1; }));
    replanner.request(named("never"));
    replanner.request(named("last"));
    ASSERT_TRUE(comes([&] { return names.size() == 2; }));
    EXPECT_EQ(names, (QStringList{"last", "last"}));
    EXPECT_EQ(stopped, 1);
}

TEST(Replanner, CanGoWhileItSearches) {
    needApplication();
    std::atomic started = false;
    {
        Replanner replanner{[&](const Session&, bool, std::stop_token stop) {
            started = true;
            while (!stop.stop_requested())
                std::this_thread::yield();
            return Plan{};
        }};
        replanner.request(named("A"));
        ASSERT_TRUE(comes([&] { return started.load(); }));
    }
    QCoreApplication::processEvents(); // nothing left over may reach what is gone
}

} // namespace
