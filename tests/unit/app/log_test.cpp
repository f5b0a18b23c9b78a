#include "app/log.h"

#include <QDir>
#include <gtest/gtest.h>

namespace bastewright::app {
namespace {

/// Sets a variable of the environment, or takes it away, until the end of a test.
class Variable {
public:
    Variable(const char* name, const char* value)
        : name_{name}
        , before_{qgetenv(name)} {
        value ? qputenv(name, value) : qunsetenv(name);
    }
    ~Variable() { before_.isNull() ? qunsetenv(name_) : qputenv(name_, before_); }
    Variable(const Variable&) = delete;
    Variable& operator=(const Variable&) = delete;

private:
    const char* name_;
    QByteArray before_;
};

// XDG Base Directory Specification 0.8: a relative folder counts as not set.
TEST(Log, LiesInTheStateFolder) {
    const Variable home{"HOME", "/home/ada"};
    {
        const Variable state{"XDG_STATE_HOME", "/elsewhere"};
        EXPECT_EQ(logFolder(), "/elsewhere/bastewright");
    }
    for (const char* useless : {static_cast<const char*>(nullptr), "", "state"}) {
        const Variable state{"XDG_STATE_HOME", useless};
        EXPECT_EQ(logFolder(), "/home/ada/.local/state/bastewright");
    }
}

} // namespace
} // namespace bastewright::app
