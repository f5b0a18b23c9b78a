#include "session/nudge.h"
namespace bastewright {}
